package simmerpoint.sun;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A clear-sky model with the range of other published models. The others describe one type of air only, so they are
 * compared with a reference sky of that type instead of the chosen sky; the ratios are applied to the chosen beam. A site
 * above a model's greatest altitude is compared at that altitude. A sun below 10° is compared at 10°, since formulas in the
 * sine of the elevation neglect the curvature of the air and Meinel's altitude term neglects the long path of a low beam.
 *
 * <p>The method is ours. It does not include the change of the air from one clear day to the next, which is often larger,
 * nor clouds.
 *
 * @param chosen the sky to calculate with
 * @param reference the sky of the type that the others describe
 * @param others models to compare; if none, there is no range
 */
public record BeamRangeModel(ClearSky chosen, ClearSky reference, List<ClearSky> others) {
    private static final double LOWEST_COMPARED = Math.toRadians(10);

    /** Copies the list. */
    public BeamRangeModel {
        others = List.copyOf(others);
    }

    /**
     * {@code chosen} with the range of four published models, {@link EsraSky} with rural air as reference.
     */
    public static BeamRangeModel around(ClearSky chosen) {
        List<ClearSky> others = List.of(new MeinelSky(), AshraeSky.edition2005(), new HottelSky());
        return new BeamRangeModel(chosen, EsraSky.of(AirType.RURAL), others);
    }

    /** {@code sky} without range, as for a given beam. */
    public static BeamRangeModel exact(ClearSky sky) {
        return new BeamRangeModel(sky, sky, List.of());
    }

    /** The beam at {@code moment}; {@link BeamRange#NONE} if the sun is not up. */
    public BeamRange at(SunMoment moment) {
        double likely = chosen.beamWattsPerSquareMetre(moment);
        if (!(likely > 0)) {
            return BeamRange.NONE;
        }
        double least = 1;
        double greatest = 1;
        for (ClearSky other : others) {
            double ratio = ratio(other, moment);
            least = Math.min(least, ratio);
            greatest = Math.max(greatest, ratio);
        }
        double above = Extraterrestrial.beam(Extraterrestrial.WORLD_RADIATION_CENTRE, moment.position());
        double high = Math.max(likely, Math.min(likely * greatest, above));
        return new BeamRange(likely * least, likely, high);
    }

    /** The compared models in one sentence for reports. */
    public String describe() {
        if (others.isEmpty()) {
            return chosen.describe();
        }
        String names = others.stream().map(ClearSky::describe).collect(Collectors.joining("; "));
        return chosen.describe() + "; range: how far other models lie from it (" + names
                + "). Haze from day to day adds to that.";
    }

    private double ratio(ClearSky other, SunMoment moment) {
        double metres = Math.min(moment.site().altitudeMetres(), other.highestAltitudeMetres());
        SunMoment known = moment.atAltitude(metres).atLeast(LOWEST_COMPARED);
        return other.beamWattsPerSquareMetre(known) / reference.beamWattsPerSquareMetre(known);
    }
}

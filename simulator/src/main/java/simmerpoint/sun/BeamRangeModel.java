package simmerpoint.sun;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What to calculate with, and how far published models of a clear sky disagree about it. The other models know only one
 * sort of air, so they are not held against the chosen sky itself (a town's haze would always look too low) but against
 * the reference, a sky of their own sort; by the same share the chosen beam may be lower or higher. Where a place is
 * higher than a model knows, it is compared with the reference at the greatest height it does know; for a sun below
 * 10° it is compared at 10°, since formulas in the sine of the elevation do not know that the air is curved, and
 * Meinel's term for height does not know that a low beam has a long way.
 *
 * <p>This is our way to put a number on the doubt between models. It does not hold how the air changes from one clear
 * day to the next, which is often more, nor clouds.
 *
 * @param chosen the sky to calculate with
 * @param reference the sky of the sort which the others describe
 * @param others models to compare; none of them: no range
 */
public record BeamRangeModel(ClearSky chosen, ClearSky reference, List<ClearSky> others) {
    private static final double LOWEST_COMPARED = Math.toRadians(10);

    /** Copies the list. */
    public BeamRangeModel {
        others = List.copyOf(others);
    }

    /**
     * {@code chosen} with the range between four published models, {@link EsraSky} of the open country as reference.
     */
    public static BeamRangeModel around(ClearSky chosen) {
        List<ClearSky> others = List.of(new MeinelSky(), AshraeSky.edition2005(), new HottelSky());
        return new BeamRangeModel(chosen, EsraSky.of(AirType.RURAL), others);
    }

    /** {@code sky} taken at its word, as for a given beam. */
    public static BeamRangeModel none(ClearSky sky) {
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

    /** What is compared, in one sentence for reports. */
    public String describe() {
        if (others.isEmpty()) {
            return chosen.describe();
        }
        String names = others.stream().map(ClearSky::describe).collect(Collectors.joining("; "));
        return chosen.describe() + "; range: how far other models lie from it (" + names
                + "). Haze from day to day adds to that.";
    }

    private double ratio(ClearSky other, SunMoment moment) {
        double metres = Math.min(moment.place().altitudeMetres(), other.highestAltitudeMetres());
        SunMoment known = moment.atAltitude(metres).atLeast(LOWEST_COMPARED);
        return other.beamWattsPerSquareMetre(known) / reference.beamWattsPerSquareMetre(known);
    }
}

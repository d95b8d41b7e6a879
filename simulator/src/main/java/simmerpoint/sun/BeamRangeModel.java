package simmerpoint.sun;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * A clear-sky model with the range of other published models. The others describe one type of air only, so they are
 * compared with a reference sky of that type instead of the chosen sky; the ratios are applied to the chosen beam. A site
 * above a model's greatest altitude is compared at that altitude. A sun below 10° is compared at 10°, since formulas in the
 * sine of the elevation neglect the curvature of the air and Meinel's altitude term neglects the long path of a low beam.
 *
 * <p>The likely beam is the middle (median) of all models. Where the chosen turbidity is that of the very place, or was
 * given, the chosen sky itself is that middle and the range lies about it as the models lie about theirs.
 *
 * <p>The method is ours. It does not include the change of the air from one clear day to the next, which is often larger,
 * nor clouds.
 *
 * @param chosen the sky to calculate with
 * @param reference the sky of the type that the others describe
 * @param others models to compare; if none, there is no range
 * @param centred whether the chosen sky is itself the middle of the range
 */
public record BeamRangeModel(ClearSky chosen, ClearSky reference, List<ClearSky> others, boolean centred) {
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
        return new BeamRangeModel(chosen, EsraSky.of(AirType.RURAL), others, false);
    }

    /** The same where the turbidity of {@code chosen} is known for the place: it is itself the middle of the range. */
    public static BeamRangeModel centredOn(ClearSky chosen) {
        BeamRangeModel range = around(chosen);
        return new BeamRangeModel(chosen, range.reference, range.others, true);
    }

    /** {@code sky} without range, as for a given beam. */
    public static BeamRangeModel exact(ClearSky sky) {
        return new BeamRangeModel(sky, sky, List.of(), true);
    }

    /** The beam at {@code moment}; {@link BeamRange#NONE} if the sun is not up. */
    public BeamRange at(SunMoment moment) {
        double own = chosen.beamWattsPerSquareMetre(moment);
        if (!(own > 0)) {
            return BeamRange.NONE;
        }
        double[] ratios = DoubleStream.concat(
                        DoubleStream.of(1), others.stream().mapToDouble(other -> ratio(other, moment)))
                .sorted()
                .toArray();
        int last = ratios.length - 1;
        double middle = (ratios[last / 2] + ratios[(last + 1) / 2]) / 2;
        double above = Extraterrestrial.beam(Extraterrestrial.WORLD_RADIATION_CENTRE, moment.position());
        double unit = centred ? own / middle : own;
        double likely = centred ? own : Math.min(unit * middle, above);
        double high = Math.max(likely, Math.min(unit * ratios[last], above));
        return new BeamRange(Math.min(likely, unit * ratios[0]), likely, high);
    }

    /** The compared models in one sentence for reports. */
    public String describe() {
        if (others.isEmpty()) {
            return chosen.describe();
        }
        String names = others.stream().map(ClearSky::describe).collect(Collectors.joining("; "));
        return chosen.describe() + "; likely is the middle, the range how far other models lie from it (" + names
                + "). Haze from day to day adds to that.";
    }

    private double ratio(ClearSky other, SunMoment moment) {
        double metres = Math.min(moment.site().altitudeMetres(), other.highestAltitudeMetres());
        SunMoment known = moment.atAltitude(metres).atLeast(LOWEST_COMPARED);
        return other.beamWattsPerSquareMetre(known) / reference.beamWattsPerSquareMetre(known);
    }
}

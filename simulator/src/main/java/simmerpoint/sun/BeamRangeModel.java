package simmerpoint.sun;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A clear-sky model with the range of what else may hold: other published models, and the error of the turbidity.
 *
 * <p>The other models describe one type of air only, so they are compared with a reference sky of that type instead of the
 * chosen sky; the ratios are applied to the chosen beam. A site above a model's greatest altitude is compared at that altitude.
 * A sun below 10° is compared at 10°, since formulas in the sine of the elevation neglect the curvature of the air and
 * Meinel's altitude term neglects the long path of a low beam. The chosen sky is also compared with itself in hazier and in
 * clearer air: four in five times the map of turbidity is no farther off.
 *
 * <p>The likely beam is the middle (median) of all of these, each with the same weight. Where the chosen turbidity is that of
 * the very place, or was given, the chosen sky itself is that middle and the models lie about it as they lie about theirs.
 *
 * <p>The method is ours. It does not include the change of the air from one clear day to the next, which is often larger,
 * nor clouds.
 *
 * @param chosen the sky to calculate with
 * @param turbidities the same sky in hazier and in clearer air
 * @param reference the sky of the type that the others describe
 * @param others models to compare; if neither these nor turbidities, there is no range
 * @param centred whether the chosen sky is itself the middle of the range
 */
public record BeamRangeModel(
        ClearSky chosen, List<ClearSky> turbidities, ClearSky reference, List<ClearSky> others, boolean centred) {
    private static final double LOWEST_COMPARED = Math.toRadians(10);

    /** Root mean square error of the world map of turbidity: Remund, Wald, Lefevre, Ranchin and Page 2003, abstract. */
    private static final double MAP_ERROR = 0.73;

    /** Standard deviations of a normal law on either side of its middle that hold four fifths of it. */
    private static final double FOUR_IN_FIVE = 1.2816;

    /** Copies the lists. */
    public BeamRangeModel {
        turbidities = List.copyOf(turbidities);
        others = List.copyOf(others);
    }

    /**
     * {@code chosen} with the range of four published models, {@link EsraSky} with rural air as reference, and of its turbidity.
     */
    public static BeamRangeModel around(EsraSky chosen) {
        List<ClearSky> others = List.of(new MeinelSky(), AshraeSky.edition2005(), new HottelSky());
        double error = FOUR_IN_FIVE * MAP_ERROR;
        List<ClearSky> turbidities = List.of(
                new EsraSky(chosen.turbidity().plus(error)),
                new EsraSky(chosen.turbidity().plus(-error)));
        return new BeamRangeModel(chosen, turbidities, EsraSky.of(AirType.RURAL), others, false);
    }

    /** The same where the turbidity of {@code chosen} is known for the place: it is itself the middle of the range. */
    public static BeamRangeModel centredOn(EsraSky chosen) {
        BeamRangeModel range = around(chosen);
        return new BeamRangeModel(chosen, range.turbidities, range.reference, range.others, true);
    }

    /** {@code sky} without range, as for a given beam. */
    public static BeamRangeModel exact(ClearSky sky) {
        return new BeamRangeModel(sky, List.of(), sky, List.of(), true);
    }

    /** The beam at {@code moment}; {@link BeamRange#NONE} if the sun is not up. */
    public BeamRange at(SunMoment moment) {
        double own = chosen.beamWattsPerSquareMetre(moment);
        if (!(own > 0)) {
            return BeamRange.NONE;
        }
        double[] models =
                sorted(DoubleStream.of(1), others.stream().mapToDouble(other -> ratio(other, reference, moment)));
        double middle = (models[(models.length - 1) / 2] + models[models.length / 2]) / 2;
        double above = Extraterrestrial.beam(Extraterrestrial.WORLD_RADIATION_CENTRE, moment.position());
        double likely = centred ? own : Math.min(own * middle, above);
        double[] all = sorted(
                DoubleStream.of(models).map(model -> model / middle),
                turbidities.stream().mapToDouble(air -> ratio(air, chosen, moment)));
        double high = Math.max(likely, Math.min(likely * all[all.length - 1], above));
        return new BeamRange(Math.min(likely, likely * all[0]), likely, high);
    }

    /** What is compared, in one sentence for reports. */
    public String describe() {
        if (others.isEmpty()) {
            return chosen.describe();
        }
        String names = others.stream().map(ClearSky::describe).collect(Collectors.joining("; "));
        return chosen.describe() + "; likely is the middle, the range how far other models lie from it (" + names
                + ") and how far its turbidity may be off. Haze from day to day adds to that.";
    }

    private static double[] sorted(DoubleStream some, DoubleStream more) {
        return Stream.of(some, more).flatMapToDouble(ratios -> ratios).sorted().toArray();
    }

    private static double ratio(ClearSky other, ClearSky reference, SunMoment moment) {
        double metres = Math.min(moment.site().altitudeMetres(), other.highestAltitudeMetres());
        SunMoment known = moment.atAltitude(metres).atLeast(LOWEST_COMPARED);
        return other.beamWattsPerSquareMetre(known) / reference.beamWattsPerSquareMetre(known);
    }
}

package simmerpoint.study.pan;

import java.util.List;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.FaceLight;
import simmerpoint.heat.PanLight;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.MonotoneCubic;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.PanIrradiation;

/** The light on the pan at any place of one move, by smooth curves through the traced positions. */
final class MoveLight {
    private static final double ROUNDING = 1e-12;

    private final ThermalPan vessel;
    private final CookingModel cooking;
    private final PanLight direct;
    private final MonotoneCubic underside;
    private final MonotoneCubic wall;
    private final MonotoneCubic lid;
    private final MonotoneCubic error;
    private final MonotoneCubic undersideAbsorptance;
    private final MonotoneCubic wetAbsorptance;
    private final MonotoneCubic dryAbsorptance;
    private final MonotoneCubic lidAbsorptance;
    private final MonotoneCubic wetShare;
    private final MonotoneCubic peak;
    private final MonotoneCubic peakError;
    private final MonotoneCubic wallPeak;
    private final MonotoneCubic evenness;
    private final MonotoneCubic middle;

    MoveLight(Scenario scenario, CookingSetup kitchen, MoveStudy.Curve curve, HotSpotCurves spots) {
        vessel = kitchen.vessel();
        cooking = kitchen.cooking();
        direct = PanIrradiation.direct(scenario, kitchen);
        underside = through(curve, curve.underside());
        wall = through(curve, curve.wall());
        lid = through(curve, curve.lid());
        error = new MonotoneCubic(
                curve.offsets(),
                curve.caught().stream().mapToDouble(Estimate::standardError).toArray());
        undersideAbsorptance = spots.undersideAbsorptance();
        lidAbsorptance = spots.lidAbsorptance();
        double line = vessel.waterLineMetres(kitchen.contents().waterKilograms())
                / vessel.pan().heightMetres();
        wetAbsorptance = spots.wallAbsorptanceBelow(line);
        dryAbsorptance = spots.wallAbsorptanceAbove(line);
        wetShare = spots.wallShareBelow(line);
        peak = spots.peak();
        peakError = spots.peakError();
        wallPeak = spots.wallPeak();
        evenness = spots.evenness();
        middle = spots.middleFlux();
    }

    /** Differences of sums may leave a face without light a rounding error above or below 0. */
    private static MonotoneCubic through(MoveStudy.Curve curve, List<Estimate> watts) {
        double rounding = ROUNDING
                * curve.caught().stream().mapToDouble(Estimate::value).max().orElse(0);
        return new MonotoneCubic(
                curve.offsets(),
                watts.stream()
                        .mapToDouble(e -> e.value() > rounding ? e.value() : 0)
                        .toArray());
    }

    /** Focused light by face. */
    PanLight focused(double offset) {
        double wet = within(wetShare.at(offset));
        double onWall = wall.at(offset);
        return new PanLight(
                new FaceLight(underside.at(offset), within(undersideAbsorptance.at(offset))),
                new FaceLight(wet * onWall, within(wetAbsorptance.at(offset))),
                new FaceLight((1 - wet) * onWall, within(dryAbsorptance.at(offset))),
                new FaceLight(lid.at(offset), within(lidAbsorptance.at(offset))));
    }

    private static double within(double share) {
        return Math.max(0, Math.min(1, share));
    }

    /** What the pan takes up of focused and direct light. */
    AbsorbedLight absorbed(double offset) {
        return focused(offset).plus(direct).absorbedBy(vessel);
    }

    /** Standard error of the absorbed watts. */
    double absorbedError(double offset) {
        double caught = underside.at(offset) + wall.at(offset) + lid.at(offset);
        double share = caught > 0 ? focused(offset).absorbedBy(vessel).total() / caught : 1;
        return share * error.at(offset);
    }

    /** Cooking power, W. */
    double cookingPowerWatts(double offset) {
        return cooking.cookingPowerWatts(absorbed(offset));
    }

    /** The same with its standard error, that of the caught light times what a caught watt brings on average. */
    Estimate cookingPower(double offset) {
        double power = cookingPowerWatts(offset);
        double caught = underside.at(offset) + wall.at(offset) + lid.at(offset);
        double without = cooking.cookingPowerWatts(direct.absorbedBy(vessel));
        return new Estimate(power, caught > 0 ? (power - without) / caught * error.at(offset) : 0);
    }

    double undersideWatts(double offset) {
        return underside.at(offset);
    }

    double wallWatts(double offset) {
        return wall.at(offset);
    }

    double lidWatts(double offset) {
        return lid.at(offset);
    }

    Estimate peak(double offset) {
        return new Estimate(Math.max(0, peak.at(offset)), peakError.at(offset));
    }

    double wallPeak(double offset) {
        return Math.max(0, wallPeak.at(offset));
    }

    double evenness(double offset) {
        return Math.max(0, evenness.at(offset));
    }

    /** Taken up by the middle of the underside, W/m². */
    double middleFlux(double offset) {
        double share = vessel.underside().absorptance() * within(undersideAbsorptance.at(offset));
        return Math.max(0, middle.at(offset)) * share;
    }
}

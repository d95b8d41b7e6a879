package simmerpoint.study.aim;

import simmerpoint.dish.MirrorSurface;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Clearance;
import simmerpoint.setup.Setup;

/** Which aims of a scenario can be: the pan keeps clear of the mirror, and the sun is above the horizon. */
final class AimFeasibility {
    private final Scenario scenario;
    private final MirrorSurface surface;

    AimFeasibility(Scenario scenario) {
        this.scenario = scenario;
        surface = scenario.dish().surface(scenario.setup().sunInDish());
    }

    boolean allows(Aim aim) {
        return isUp(aim) && keepsClear(aim);
    }

    private boolean isUp(Aim aim) {
        return scenario.sun().elevationRadians() + aim.driftUpRadians() > 0;
    }

    private boolean keepsClear(Aim aim) {
        Setup setup = scenario.withAim(aim).setup();
        return Clearance.aboveMirror(surface, setup, scenario.target()) > 0;
    }
}

package simmerpoint.study.trace;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.FaceLight;
import simmerpoint.heat.PanLight;
import simmerpoint.heat.ThermalPan;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.CaughtByFace;

/** Traced light on a pan's faces, in the terms of the heat balance. */
public final class PanIrradiation {
    private PanIrradiation() {}

    /** Focused light on the faces, the wall's parted at the water line. */
    public static PanLight focused(CaughtByFace faces, CookingSetup kitchen) {
        ThermalPan vessel = kitchen.vessel();
        double line = vessel.waterLineMetres(kitchen.contents().waterKilograms())
                / vessel.pan().heightMetres();
        double wall = faces.wallWatts();
        double wet = faces.wallShareBelow(line);
        return new PanLight(
                new FaceLight(faces.underside(), faces.undersideAbsorptance()),
                new FaceLight(wet * wall, faces.wallAbsorptanceBelow(line)),
                new FaceLight((1 - wet) * wall, faces.wallAbsorptanceAbove(line)),
                new FaceLight(faces.lid(), faces.lidAbsorptance()));
    }

    /** Focused light and the sun itself on lid and wall. */
    public static PanLight all(CaughtByFace faces, Scenario scenario, CookingSetup kitchen) {
        return focused(faces, kitchen).plus(direct(scenario, kitchen));
    }

    /** The sun itself, where it stands after any drift, on lid and wall. */
    public static PanLight direct(Scenario scenario, CookingSetup kitchen) {
        double up = scenario.setup().sunInTarget().vec().z();
        return PanLight.direct(
                kitchen.vessel(),
                kitchen.contents().waterKilograms(),
                scenario.sun().beamWattsPerSquareMetre(),
                Math.asin(Math.max(0, Math.min(1, up))));
    }

    /** What the pan takes up of all light on it. */
    public static AbsorbedLight absorbed(CaughtByFace faces, Scenario scenario, CookingSetup kitchen) {
        return all(faces, scenario, kitchen).absorbedBy(kitchen.vessel());
    }
}

package simmerpoint.viewer.light;

import simmerpoint.drawing.cooker.FieldSlice;
import simmerpoint.pan.Pan;
import simmerpoint.safety.CookerLight;
import simmerpoint.safety.YardRisks;
import simmerpoint.scenario.Scenario;

/**
 * The light of one cooker with pictures of it, which take too long to be made with every movement of the hand.
 *
 * @param light of the cooker
 * @param standing picture with the pan in place
 * @param taken picture with the pan taken away
 */
public record LightFound(CookerLight light, FieldSlice standing, FieldSlice taken) {
    /** With its pictures. */
    public static LightFound of(CookerLight light) {
        FieldSlice taken = FieldSlice.of(light.taken().light());
        boolean pan = light.scenario().target() instanceof Pan;
        return new LightFound(light, pan ? FieldSlice.of(light.standing().light()) : taken, taken);
    }

    /** The cooker. */
    public Scenario scenario() {
        return light.scenario();
    }

    /** The light with the pan taken away, or in place. */
    public YardRisks risks(boolean panTaken) {
        return panTaken ? light.taken() : light.standing();
    }

    /** Its picture. */
    public FieldSlice slice(boolean panTaken) {
        return panTaken ? taken : standing;
    }
}

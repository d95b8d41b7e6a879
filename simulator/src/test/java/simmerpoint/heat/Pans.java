package simmerpoint.heat;

import simmerpoint.heat.balance.CookingModel;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;

/** Pans that several tests share. */
public final class Pans {
    public static final PanMaterial STEEL = PanMaterial.find("steel").orElseThrow();
    public static final Finish BLACK = new Finish("black enamel", 0.93);
    public static final Surroundings GARDEN = Surroundings.outdoors(20, 1, 300);
    public static final Surroundings KITCHEN = new Surroundings(20, 0, 0, 0.5, false);

    private Pans() {}

    /** 24 cm wide, 11 cm high, enamelled steel of 1.4 kg. */
    public static ThermalPan teaPan(boolean lidOn) {
        return ThermalPan.of(new Pan(0.24, 0.11, BLACK), STEEL, 1.4, lidOn);
    }

    /** 18 cm wide, 10 cm high, 0.8 kg of stainless steel. */
    public static ThermalPan saucepan(boolean lidOn) {
        Pan pan = new Pan(0.18, 0.10, new Finish("polished stainless steel", 0.38));
        return ThermalPan.of(pan, PanMaterial.find("stainless steel").orElseThrow(), 0.8, lidOn);
    }

    public static CookingModel tea(double waterKilograms, boolean lidOn) {
        return new CookingModel(teaPan(lidOn), new PanContents(waterKilograms, 20), GARDEN);
    }

    public static double boilLikely(CookingModel cooking, double watts) {
        return cooking.likelyBoilSeconds(AbsorbedLight.onUnderside(watts)).orElse(Double.POSITIVE_INFINITY);
    }
}

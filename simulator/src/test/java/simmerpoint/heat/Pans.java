package simmerpoint.heat;

import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;

/** Pans that several tests share. */
final class Pans {
    static final VesselMaterial STEEL = VesselMaterial.find("steel").orElseThrow();
    static final Finish BLACK = new Finish("black enamel", 0.93);
    static final Surroundings GARDEN = Surroundings.outdoors(20, 1, 300);
    static final Surroundings KITCHEN = new Surroundings(20, 0, 0, 0.5, false);

    private Pans() {}

    /** 24 cm wide, 11 cm high, enamelled steel of 1.4 kg. */
    static Vessel teaPan(boolean lidOn) {
        return Vessel.of(new Pan(0.24, 0.11, BLACK), STEEL, 1.4, lidOn);
    }

    /** 18 cm wide, 10 cm high, 0.8 kg of stainless steel. */
    static Vessel saucepan(boolean lidOn) {
        Pan pan = new Pan(0.18, 0.10, new Finish("polished stainless steel", 0.38));
        return Vessel.of(pan, VesselMaterial.find("stainless steel").orElseThrow(), 0.8, lidOn);
    }

    static Cooking tea(double waterKilograms, boolean lidOn) {
        return new Cooking(teaPan(lidOn), new Contents(waterKilograms, 20), GARDEN);
    }

    static double boilLikely(Cooking cooking, double watts) {
        return cooking.likelyBoilSeconds(Absorbed.onUnderside(watts)).orElse(Double.POSITIVE_INFINITY);
    }
}

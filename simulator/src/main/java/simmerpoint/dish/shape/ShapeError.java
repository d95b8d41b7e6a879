package simmerpoint.dish.shape;

import java.util.Locale;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;

/** A way in which a whole dish differs from its plan: the same in all panels, where random errors differ from one to the next. */
public enum ShapeError {
    /** Sheet hangs between ribs under its own weight; m midway at the rim, the dish on its back. */
    SHEET_SAG("sheet hanging between ribs", CutTrait.RIBS, true) {
        @Override
        Deformation of(double metres, DishPlan plan, WeightDirection weight) {
            return new SagBetweenRibs(metres, ribs(plan), plan.radiusMetres(), plan.focalLengthMetres(), weight);
        }
    },
    /** Sheet or film stands out between ribs; m towards the light, midway at the rim. */
    SHEET_BULGE("sheet bulging between ribs", CutTrait.RIBS, false) {
        @Override
        Deformation of(double metres, DishPlan plan, WeightDirection weight) {
            return new BulgeBetweenRibs(metres, ribs(plan), plan.radiusMetres());
        }
    },
    /** The curve has opened; m by which the dish is shallower. */
    SPRINGBACK("springback", CutTrait.PARABOLOID, false) {
        @Override
        Deformation of(double metres, DishPlan plan, WeightDirection weight) {
            return new Springback(metres, plan.radiusMetres());
        }
    },
    /** The dish hangs down from its middle; m at the rim, the dish on its back. */
    DISH_SAG("rim hanging down", CutTrait.PARABOLOID, true) {
        @Override
        Deformation of(double metres, DishPlan plan, WeightDirection weight) {
            return new DishSag(metres, plan.focalLengthMetres(), plan.radiusMetres(), weight);
        }
    },
    /** A saddle; m by which the rim is too high at two corners and too low at the other two. */
    TWIST("twisted rim", CutTrait.PARABOLOID, false) {
        @Override
        Deformation of(double metres, DishPlan plan, WeightDirection weight) {
            return new Twist(metres, plan.radiusMetres());
        }
    },
    /** The rim stands nearer to the axis; m. */
    RIM_PULLED_IN("rim pulled in", CutTrait.PARABOLOID, false) {
        @Override
        Deformation of(double metres, DishPlan plan, WeightDirection weight) {
            return new RimPull(metres, plan.focalLengthMetres(), plan.radiusMetres());
        }
    };

    private final String words;
    private final CutTrait trait;
    private final boolean byWeight;

    ShapeError(String words, CutTrait trait, boolean byWeight) {
        this.words = words;
        this.trait = trait;
        this.byWeight = byWeight;
    }

    /** What it does to a dish, as planned otherwise. */
    abstract Deformation of(double metres, DishPlan plan, WeightDirection weight);

    private static int ribs(DishPlan plan) {
        return plan.cut().ribs(plan).orElseThrow().sectors();
    }

    /** Its key in a scenario's section shape, and in files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Its name for a builder. */
    public String words() {
        return words;
    }

    /** What a cut must have to have it. */
    public CutTrait trait() {
        return trait;
    }

    /** Whether it comes from weight, and so depends on how high the dish points. */
    public boolean byWeight() {
        return byWeight;
    }

    /** Whether it is one of the sheet between ribs; else of the whole dish. */
    public boolean isBetweenRibs() {
        return trait == CutTrait.RIBS;
    }
}

package simmerpoint.study.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.pan.MoveStudy;

/** All figures whose steps a budget looks at. */
final class SensitivityParameters {
    private static final double WIDEST = 0.2;
    private static final double MOST = 1;
    private static final double ANYWHERE = Double.POSITIVE_INFINITY;
    private static final double TENTH_OF_A_DEGREE = Math.toRadians(0.1);

    private static final String[] WAYS = {
        "up", "up right", "right", "down right", "down", "down left", "left", "up left"
    };

    static final List<Parameter> ALL = List.of(
            angle(
                    "slope-error",
                    "slope error",
                    s -> s.mirror().slopeErrorRadians(),
                    mirrors(Mirror::slopeErrorRadians, Mirror::withSlopeError)),
            angle(
                            "panel-tilt",
                            "panel tilt",
                            s -> s.mirror().panelTiltRadians(),
                            mirrors(Mirror::panelTiltRadians, Mirror::withPanelTilt))
                    .onlyIf(s -> s.dish().cut().has(CutTrait.PANELS)),
            angle(
                    "beam-spread",
                    "beam spread",
                    s -> s.mirror().beamSpreadRadians(),
                    mirrors(Mirror::beamSpreadRadians, Mirror::withBeamSpread)),
            share(
                    "reflectance",
                    "reflectance",
                    s -> s.mirror().reflectance(),
                    mirrors(Mirror::reflectance, Mirror::withReflectance)),
            share("scatter", "scatter", s -> s.mirror().scattered(), mirrors(Mirror::scattered, Mirror::withScattered)),
            share("dust", "dust", s -> s.mirror().dust(), mirrors(Mirror::dust, Mirror::withDust))
                    .onlyIf(s -> s.mirror().dust() + 0.02 < 1),
            Parameter.number(
                            "gap",
                            "gap",
                            Parameter.Unit.MILLIMETRE,
                            0,
                            ANYWHERE,
                            s -> s.dish().gapMetres(),
                            (s, x) -> s.withDish(
                                    s.dish().withWiderGaps(x - s.dish().gapMetres())))
                    .onlyIf(SensitivityParameters::hasPanelsInSectors),
            onTheSky("drift", "drift", (s, up, side) -> s.withAim(s.aim().plusDrift(up, side))),
            onTheSky("turn", "turn", (s, up, side) -> s.withAim(s.aim().plusTurn(up, side))),
            angle(
                    "jitter",
                    "jitter",
                    s -> s.aim().jitterRadians(),
                    (s, x) -> s.withAim(s.aim().withJitter(x))),
            move("pull-back", MoveStudy.Move.PULL_BACK),
            move("slide", MoveStudy.Move.SLIDE),
            move("raise", MoveStudy.Move.RAISE),
            move("side", MoveStudy.Move.SIDE));

    private SensitivityParameters() {}

    private static Parameter angle(
            String key, String name, ToDoubleFunction<Scenario> getter, Parameter.Setter setter) {
        return Parameter.number(key, name, Parameter.Unit.MILLIRADIAN, 0, WIDEST, getter, setter);
    }

    private static Parameter share(
            String key, String name, ToDoubleFunction<Scenario> getter, Parameter.Setter setter) {
        return Parameter.number(key, name, Parameter.Unit.PERCENT, 0, MOST, getter, setter);
    }

    private static Parameter move(String key, MoveStudy.Move move) {
        return Parameter.number(
                key,
                key,
                Parameter.Unit.CENTIMETRE,
                -ANYWHERE,
                ANYWHERE,
                s -> 0,
                (s, x) -> s.withStand(move.from(s.stand(), x)));
    }

    /** Sets a figure of the dish's mirror, and moves it as far on zones that have mirrors of their own. */
    private static Parameter.Setter mirrors(ToDoubleFunction<Mirror> figure, BiFunction<Mirror, Double, Mirror> with) {
        return (s, x) -> {
            double step = x - figure.applyAsDouble(s.mirror());
            return s.withMirror(with.apply(s.mirror(), x))
                    .withDish(s.dish()
                            .withMirrors(zone ->
                                    with.apply(zone, Math.max(0, Math.min(MOST, figure.applyAsDouble(zone) + step)))));
        };
    }

    /** Tiles are left out: a wider gap between them moves them all and changes their number by jumps. */
    private static boolean hasPanelsInSectors(Scenario s) {
        return s.dish().cut().has(CutTrait.RIBS);
    }

    /** Moves an aim by angles on the sky, rad. */
    private interface Aiming {
        Scenario by(Scenario scenario, double up, double side);
    }

    private static Parameter onTheSky(String key, String name, Aiming aiming) {
        return new Parameter(key, name, Parameter.Unit.DEGREE, TENTH_OF_A_DEGREE, s -> {
            List<ParameterStep> steps = new ArrayList<>();
            for (int k = 0; k < WAYS.length; k++) {
                double angle = 2 * Math.PI * k / WAYS.length;
                double up = TENTH_OF_A_DEGREE * Math.cos(angle);
                double side = TENTH_OF_A_DEGREE * Math.sin(angle);
                steps.add(new ParameterStep(WAYS[k], aiming.by(s, up, side)));
            }
            return steps;
        });
    }
}

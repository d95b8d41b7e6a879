package simmerpoint.study;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.CutTrait;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;

/** All figures whose steps a budget looks at. */
final class Knobs {
    private static final double WIDEST = 0.2;
    private static final double MOST = 1;
    private static final double ANYWHERE = Double.POSITIVE_INFINITY;
    private static final double TENTH_OF_A_DEGREE = Math.toRadians(0.1);

    private static final String[] WAYS = {
        "up", "up right", "right", "down right", "down", "down left", "left", "up left"
    };

    static final List<Knob> ALL = List.of(
            angle(
                    "slope-error",
                    "slope error",
                    s -> s.mirror().slopeErrorRadians(),
                    (s, x) -> s.withMirror(s.mirror().withSlopeError(x))),
            angle(
                            "panel-tilt",
                            "panel tilt",
                            s -> s.mirror().panelTiltRadians(),
                            (s, x) -> s.withMirror(s.mirror().withPanelTilt(x)))
                    .onlyIf(s -> s.dish().cut().has(CutTrait.PANELS)),
            angle(
                    "beam-spread",
                    "beam spread",
                    s -> s.mirror().beamSpreadRadians(),
                    (s, x) -> s.withMirror(s.mirror().withBeamSpread(x))),
            share(
                    "reflectance",
                    "reflectance",
                    s -> s.mirror().reflectance(),
                    (s, x) -> s.withMirror(s.mirror().withReflectance(x))),
            share(
                    "scatter",
                    "scatter",
                    s -> s.mirror().scattered(),
                    (s, x) -> s.withMirror(s.mirror().withScattered(x))),
            share(
                            "dust",
                            "dust",
                            s -> s.mirror().dust(),
                            (s, x) -> s.withMirror(s.mirror().withDust(x)))
                    .onlyIf(s -> s.mirror().dust() + 0.02 < 1),
            Knob.number(
                            "gap",
                            "gap",
                            Knob.Unit.MILLIMETRE,
                            0,
                            ANYWHERE,
                            s -> s.dish().gapMetres(),
                            (s, x) -> s.withDish(s.dish().withGap(x)))
                    .onlyIf(Knobs::hasPanelsInSectors),
            onTheSky("drift", "drift", (s, up, side) -> {
                Aim a = s.aim();
                return s.withAim(a.withDrift(a.driftUpRadians() + up, a.driftSideRadians() + side));
            }),
            onTheSky("turn", "turn", (s, up, side) -> {
                Aim a = s.aim();
                return s.withAim(a.withTurn(a.turnUpRadians() + up, a.turnSideRadians() + side));
            }),
            angle(
                    "jitter",
                    "jitter",
                    s -> s.aim().jitterRadians(),
                    (s, x) -> s.withAim(s.aim().withJitter(x))),
            move("pull-back", MoveStudy.Move.PULL_BACK),
            move("slide", MoveStudy.Move.SLIDE),
            move("raise", MoveStudy.Move.RAISE),
            move("side", MoveStudy.Move.SIDE));

    private Knobs() {}

    private static Knob angle(
            String key, String name, java.util.function.ToDoubleFunction<Scenario> getter, Knob.Setter setter) {
        return Knob.number(key, name, Knob.Unit.MILLIRADIAN, 0, WIDEST, getter, setter);
    }

    private static Knob share(
            String key, String name, java.util.function.ToDoubleFunction<Scenario> getter, Knob.Setter setter) {
        return Knob.number(key, name, Knob.Unit.PERCENT, 0, MOST, getter, setter);
    }

    private static Knob move(String key, MoveStudy.Move move) {
        return Knob.number(
                key,
                key,
                Knob.Unit.CENTIMETRE,
                -ANYWHERE,
                ANYWHERE,
                s -> 0,
                (s, x) -> s.withStand(move.from(s.stand(), x)));
    }

    /** Tiles are left out: a wider gap between them moves them all and changes their number by jumps. */
    private static boolean hasPanelsInSectors(Scenario s) {
        return s.dish().cut().has(CutTrait.RIBS);
    }

    /** Moves an aim by angles on the sky, rad. */
    private interface Aiming {
        Scenario by(Scenario scenario, double up, double side);
    }

    private static Knob onTheSky(String key, String name, Aiming aiming) {
        return new Knob(key, name, Knob.Unit.DEGREE, TENTH_OF_A_DEGREE, s -> {
            List<Knob.Turn> turns = new ArrayList<>();
            for (int k = 0; k < WAYS.length; k++) {
                double angle = 2 * Math.PI * k / WAYS.length;
                double up = TENTH_OF_A_DEGREE * Math.cos(angle);
                double side = TENTH_OF_A_DEGREE * Math.sin(angle);
                turns.add(new Knob.Turn(WAYS[k], aiming.by(s, up, side)));
            }
            return turns;
        });
    }
}

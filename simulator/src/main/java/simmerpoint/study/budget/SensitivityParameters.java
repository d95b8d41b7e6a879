package simmerpoint.study.budget;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Zone;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.pan.MoveStudy;

/** All figures whose steps a budget looks at. */
final class SensitivityParameters {
    private static final double WIDEST = 0.2;
    private static final double MOST = 1;

    /** No step leads to a mirror that is dust and nothing else. */
    private static final double MOST_DUST = 0.99;

    private static final double ANYWHERE = Double.POSITIVE_INFINITY;
    private static final double TENTH_OF_A_DEGREE = Math.toRadians(0.1);

    private static final String[] WAYS = {
        "up", "up right", "right", "down right", "down", "down left", "left", "up left"
    };

    /** Those of the mirror: of a dish, or of one of its zones. */
    private static final List<MirrorFigure> MIRROR = List.of(
            angle("slope-error", "slope error", Mirror::slopeErrorRadians, Mirror::withSlopeError),
            angle("panel-tilt", "panel tilt", Mirror::panelTiltRadians, Mirror::withPanelTilt)
                    .onlyOnPanels(),
            angle("beam-spread", "beam spread", Mirror::beamSpreadRadians, Mirror::withBeamSpread),
            share("reflectance", "reflectance", MOST, Mirror::reflectance, Mirror::withReflectance),
            share("scatter", "scatter", MOST, Mirror::scattered, Mirror::withScattered),
            share("dust", "dust", MOST_DUST, Mirror::dust, Mirror::withDust));

    private static final List<Parameter> OTHERS = List.of(
            onTheSky("drift", "drift", (s, up, side) -> s.withAim(s.aim().plusDrift(up, side))),
            onTheSky("turn", "turn", (s, up, side) -> s.withAim(s.aim().plusTurn(up, side))),
            Parameter.number(
                    "jitter",
                    "jitter",
                    Parameter.Unit.MILLIRADIAN,
                    0,
                    WIDEST,
                    s -> s.aim().jitterRadians(),
                    (s, x) -> s.withAim(s.aim().withJitter(x))),
            move("pull-back", MoveStudy.Move.PULL_BACK),
            move("slide", MoveStudy.Move.SLIDE),
            move("raise", MoveStudy.Move.RAISE),
            move("side", MoveStudy.Move.SIDE));

    private SensitivityParameters() {}

    /** Those of a scenario; each zone of a dish has its own figures of mirror and gaps. */
    static List<Parameter> of(Scenario scenario) {
        List<Zone> zones = scenario.dish().cut().zones();
        Stream<Parameter> mirrors = zones.isEmpty()
                ? MIRROR.stream().map(MirrorFigure::ofDish)
                : MIRROR.stream().flatMap(figure -> zones.stream().map(figure::ofZone));
        Stream<Parameter> gaps =
                zones.isEmpty() ? Stream.of(gap()) : zones.stream().map(SensitivityParameters::gap);
        return Stream.of(mirrors, gaps, OTHERS.stream()).flatMap(each -> each).toList();
    }

    private static MirrorFigure angle(
            String key, String name, ToDoubleFunction<Mirror> figure, BiFunction<Mirror, Double, Mirror> with) {
        return new MirrorFigure(key, name, Parameter.Unit.MILLIRADIAN, WIDEST, figure, with, cut -> true);
    }

    private static MirrorFigure share(
            String key,
            String name,
            double most,
            ToDoubleFunction<Mirror> figure,
            BiFunction<Mirror, Double, Mirror> with) {
        return new MirrorFigure(key, name, Parameter.Unit.PERCENT, most, figure, with, cut -> true);
    }

    private static Parameter gap() {
        return Parameter.number(
                        "gap",
                        "gap",
                        Parameter.Unit.MILLIMETRE,
                        0,
                        ANYWHERE,
                        s -> s.dish().gapMetres(),
                        (s, x) -> s.withDish(s.dish().withGap(x)))
                .onlyIf(s -> hasPanelsInSectors(s.dish()));
    }

    private static Parameter gap(Zone zone) {
        return Parameter.number(
                        Flaw.key("gap", zone.name()),
                        "gap, zone " + zone.name(),
                        Parameter.Unit.MILLIMETRE,
                        0,
                        ANYWHERE,
                        s -> s.dish().zone(zone.name()).plan().gapMetres(),
                        (s, x) -> s.withDish(s.dish()
                                .withZone(zone.name(), z -> z.withPlan(z.plan().withGap(x)))))
                .onlyIf(s -> hasPanelsInSectors(s.dish().zone(zone.name()).plan()));
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

    /** Tiles are left out: a wider gap between them moves them all and changes their number by jumps. */
    private static boolean hasPanelsInSectors(DishPlan dish) {
        return dish.cut().has(CutTrait.RIBS);
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

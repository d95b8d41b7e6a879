package simmerpoint.trial.fit;

import java.util.List;
import java.util.Map;
import simmerpoint.dish.CutTrait;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.fit.FlawStep.Way;

/**
 * What may be wrong with a cooker beyond its usual doubts. The size of a flaw that is there follows a normal law about nothing; its standard
 * deviation is what hand-built cookers have (our estimates).
 */
public enum TrialFlaw {
    /** The mirror's surface is rougher; adds in squares to the planned slope error, rad. */
    SLOPE_ERROR("slope-error", 0.010),
    /** Panels are glued askew; adds in squares to the planned tilt, rad. */
    PANEL_TILT("panel-tilt", 0.012),
    /** The mirror is flatter than planned, so that its focal length is longer; a share of it. */
    SPRINGBACK("springback", 0.1),
    /** The dish is aimed wrong, halfway between up and sideways, rad. */
    AIM("aim", Math.toRadians(2)),
    /** The mirror throws back less; a share of what it should. */
    REFLECTANCE("reflectance", 0.2),
    /** The pan stands elsewhere than the scenario says, m. */
    PAN_PLACE("pan-place", 0.06),
    /** The lid was off. */
    LID("lid", 1),
    /** There was more wind, m/s. */
    WIND("wind", 1.5);

    /** Of a wind that was measured, m/s. */
    private static final double MEASURED_WIND = 0.3;

    private static final double LEAST_REFLECTED = 0.05;
    private static final double STRONGEST_WIND = 20;
    private static final String PULL_BACK = "stand.pull-back";
    private static final String SIDE = "stand.side";

    private final String key;
    private final double deviation;

    TrialFlaw(String key, double deviation) {
        this.key = key;
        this.deviation = deviation;
    }

    /** Its name in files. */
    public String key() {
        return key;
    }

    /** Standard deviation of its size. */
    double deviation(boolean windMeasured) {
        return this == WIND && windMeasured ? MEASURED_WIND : deviation;
    }

    /** Whether it is or is not, without a size. */
    boolean isSwitch() {
        return this == LID;
    }

    /** Which ways it can go. */
    List<Way> ways() {
        return this == PAN_PLACE ? List.of(Way.OUT, Way.IN, Way.ASIDE) : List.of(Way.ONLY);
    }

    /** Whether a scenario can have it. */
    boolean isPossible(Scenario s) {
        return switch (this) {
            case PANEL_TILT -> s.dish().cut().has(CutTrait.PANELS);
            case SPRINGBACK ->
                s.dish().cut().has(CutTrait.PARABOLOID) && !s.dish().cut().has(CutTrait.OWN_SIZE);
            case LID -> s.cooking().orElseThrow().vessel().lidOn();
            default -> true;
        };
    }

    /** One size of it in a scenario. */
    FlawStep step(CheckedScenario read, Way way, double size) {
        return isSwitch()
                ? new FlawStep(way, size, Map.of(), Map.of("pan.lid", "off"))
                : new FlawStep(way, size, numbers(read, way, size), Map.of());
    }

    private Map<String, Double> numbers(CheckedScenario read, Way way, double size) {
        Scenario s = read.scenario();
        return switch (this) {
            case SLOPE_ERROR ->
                Map.of("mirror.slope-error", Math.hypot(s.mirror().slopeErrorRadians(), size));
            case PANEL_TILT -> Map.of("mirror.panel-tilt", Math.hypot(s.mirror().panelTiltRadians(), size));
            case SPRINGBACK -> springback(read, size);
            case AIM ->
                Map.of(
                        "aim.turn.up",
                        s.aim().turnUpRadians() + size * Math.sqrt(0.5),
                        "aim.turn.side",
                        s.aim().turnSideRadians() + size * Math.sqrt(0.5));
            case REFLECTANCE ->
                Map.of("mirror.reflectance", s.mirror().reflectance() * Math.max(LEAST_REFLECTED, 1 - size));
            case PAN_PLACE ->
                way == Way.ASIDE
                        ? Map.of(SIDE, read.values().number(SIDE) + size)
                        : Map.of(PULL_BACK, read.values().number(PULL_BACK) + (way == Way.OUT ? size : -size));
            case LID -> Map.of();
            case WIND ->
                Map.of(
                        "air.wind",
                        Math.min(
                                STRONGEST_WIND,
                                s.cooking().orElseThrow().around().windMetresPerSecond() + size));
        };
    }

    /** A longer focal length, with the pan where it was. */
    private static Map<String, Double> springback(CheckedScenario read, double size) {
        double longer = read.scenario().dish().focalLengthMetres() * size;
        return Map.of(
                "dish.focal-length",
                read.scenario().dish().focalLengthMetres() + longer,
                PULL_BACK,
                read.values().number(PULL_BACK) - longer);
    }
}

package simmerpoint.dish.cut;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import simmerpoint.dish.Aperture;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutRefusal;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.CutValues;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.OwnSize;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.units.QuantityWriter;

/**
 * A smooth shell beside the axis of its paraboloid, such as an old antenna: {@link ShellTape} says what it is a part of.
 *
 * @param tape what it is
 * @param deviations standard deviation of each length, m
 * @param deepestAt where its deepest place was found, from the end nearer the axis, m; 0 if nobody looked
 * @param nearEndUp whether the end nearer the axis is the upper one
 * @param supposed what its builder takes it for, who stands the pan by strings from the ends of the rim
 */
public record OffAxisShell(
        ShellTape tape, ShellTape deviations, double deepestAt, boolean nearEndUp, ShellTape supposed) implements Cut {
    /** Standard deviation of a length where the file says nothing of it: ± 2 mm of a tape held by hand (typical, our estimate), m. */
    public static final double USUAL_DEVIATION = 0.001;

    private static final double STEEPEST = 2;
    private static final double LEAST_FOCAL_SHARE = 0.15;
    private static final String DOWN = "down";

    private static final CutParameter WIDTH = CutParameter.length(
            "width", "900 mm", "1 cm to 100 m", "30 cm to 250 cm", "Width of the shell's rim across, the short way.");
    private static final CutParameter HEIGHT = CutParameter.length(
            "height", "992 mm", "1 cm to 100 m", "30 cm to 250 cm", "Height of the shell's rim, the long way.");
    private static final CutParameter DEPTH = CutParameter.length(
            "depth",
            "85 mm",
            "1 mm to 50 m",
            "2 cm to 30 cm",
            "Greatest depth of the shell below a straight edge laid across its rim.");
    private static final CutParameter DEEPEST_AT = new CutParameter(
            "deepest-at",
            CutParameter.Type.LENGTH,
            "0 mm",
            "457 mm",
            "0 mm to 100 m",
            "10 cm to 120 cm",
            List.of(),
            "How far from the near end of the rim the deepest place lies, less than half the height, to check the other lengths by; 0 if not measured.");
    private static final CutParameter NEAR_END = CutParameter.word(
            "near-end",
            DOWN,
            List.of(DOWN, "up"),
            "Which end of the shell's rim is the one nearer the focus, where an antenna has its arm: down, as usual, or up.");

    /** What is known of it beforehand. */
    public static final CutKind KIND = new CutKind(
            "off-axis-shell",
            "a shell beside its axis, such as an old antenna",
            List.of(WIDTH, HEIGHT, DEPTH, DEEPEST_AT, NEAR_END),
            Set.of(CutTrait.PARABOLOID, CutTrait.FULL_RIM, CutTrait.OWN_SIZE),
            OffAxisShell::of);

    private static OffAxisShell of(CutValues values) {
        ShellTape tape = new ShellTape(values.length(WIDTH), values.length(HEIGHT), values.length(DEPTH));
        check(tape);
        ShellTape deviations =
                new ShellTape(deviation(values, WIDTH), deviation(values, HEIGHT), deviation(values, DEPTH));
        return new OffAxisShell(
                tape,
                deviations,
                values.length(DEEPEST_AT),
                !values.word(NEAR_END).equals(DOWN),
                tape);
    }

    private static double deviation(CutValues values, CutParameter parameter) {
        return values.deviation(parameter).orElse(USUAL_DEVIATION);
    }

    private static void check(ShellTape tape) {
        String width = QuantityWriter.length(tape.width());
        String height = QuantityWriter.length(tape.height());
        if (!(tape.width() <= tape.height())) {
            throw new CutRefusal(
                    WIDTH,
                    width + " is more than the height, " + height
                            + "; a shell cut from beside the axis is longer than wide: height is the long way of its rim,"
                            + " width the short one");
        }
        if (!(tape.height() < STEEPEST * tape.width())) {
            throw new CutRefusal(
                    HEIGHT,
                    height + " is twice the width, " + width
                            + ", or more, so that the rim would lean by 60° or more; measure both again");
        }
        if (!(tape.focalLength() >= LEAST_FOCAL_SHARE * tape.width())) {
            throw new CutRefusal(
                    DEPTH,
                    QuantityWriter.length(tape.depth()) + " is too deep for a shell " + width
                            + " wide: its focus would lie only " + QuantityWriter.length(tape.focalLength())
                            + " away; at most "
                            + QuantityWriter.length(
                                    tape.depth() * tape.focalLength() / (LEAST_FOCAL_SHARE * tape.width()))
                            + " is allowed");
        }
    }

    /** How badly its figures are known. */
    public ShellDoubt doubt() {
        return new ShellDoubt(supposed, deviations);
    }

    /** Whether its width and height are as good as equal, so that nothing tells a shell beside its axis from a round dish. */
    public boolean seemsRound() {
        return supposed.height() - supposed.width() <= 2 * Math.hypot(deviations.width(), deviations.height());
    }

    /** By how much the deepest place may lie elsewhere before it says that a length is wrong: where the shell is 2 mm less deep, m. */
    public double deepestSlack() {
        // The depth along the long way falls off as a parabola: h·(1 − (s/(H/2))²), nearly.
        return tape.height() / 2 * Math.sqrt(2 * USUAL_DEVIATION / tape.depth());
    }

    @Override
    public CutKind kind() {
        return KIND;
    }

    @Override
    public Optional<OwnSize> ownSize() {
        return Optional.of(new OwnSize(tape.width(), tape.focalLength()));
    }

    @Override
    public Aperture aperture(DishPlan plan) {
        return new Aperture(upwards() * tape.offset(), 0, tape.width() / 2);
    }

    /** +1 if the far end is up. */
    private int upwards() {
        return nearEndUp ? -1 : 1;
    }

    /**
     * Where strings from both ends of the rim meet that are as long as the supposed shell asks for. From the near end, along the rim's
     * long way u = (a² − b² + H²)/2H and square to it √(a² − u²), for strings a and b (the law of cosines).
     */
    @Override
    public Vec supposedFocus(DishPlan plan) {
        if (supposed.equals(tape)) {
            return new Vec(0, 0, tape.focalLength());
        }
        double a = supposed.nearString();
        double b = supposed.farString();
        double along = (a * a - b * b + tape.height() * tape.height()) / (2 * tape.height());
        double out = Math.sqrt(Math.max(0, a * a - along * along));
        double cos = Math.cos(tape.tilt());
        double sin = Math.sin(tape.tilt());
        double near = tape.offset() - tape.width() / 2;
        double up = near + along * cos - out * sin;
        return new Vec(upwards() * up, 0, plan.parabola().height(near) + along * sin + out * cos);
    }

    @Override
    public Cut supposedAs(Cut planned) {
        return planned instanceof OffAxisShell other
                ? new OffAxisShell(tape, deviations, deepestAt, nearEndUp, other.supposed)
                : this;
    }

    @Override
    public double reachMetres(DishPlan plan) {
        return aperture(plan).reach();
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return new SmoothSurface(plan);
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        return List.of(new PanelOutline(0, Smooth.circle(plan, aperture(plan)), List.of()));
    }

    /** It is not made of panels. */
    @Override
    public List<FlatPanel> flatPanels(DishPlan plan) {
        return List.of();
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        return "a shell beside the axis, " + length.apply(tape.width()) + " wide, " + length.apply(tape.height())
                + " high and " + length.apply(tape.depth()) + " deep, its near end " + (nearEndUp ? "up" : DOWN);
    }
}

package simmerpoint.study.budget;

import static simmerpoint.study.budget.Flaw.Mending.BY_BUYING;
import static simmerpoint.study.budget.Flaw.Mending.BY_HAND;
import static simmerpoint.study.budget.Flaw.Mending.NEVER;
import static simmerpoint.study.budget.FlawSize.Kind.DEVIATION;
import static simmerpoint.study.budget.FlawSize.Kind.LENGTH;
import static simmerpoint.study.budget.FlawSize.Kind.SHARE;
import static simmerpoint.study.budget.FlawSize.Kind.SKY_ANGLE;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.cut.MeasuredMirror;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.dish.cut.Perfected;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;

/**
 * All flaws a budget knows: add another one to {@link #ALL} and everything else follows. The sun's size, its beam, the
 * pan's size and what its finish takes up are no flaws: no care of a builder's can mend them. In a dish of zones the mirror and the panels of
 * each have flaws of their own; hub and gaps are the whole dish's, since what one zone leaves free another may cover.
 *
 * <p>Curved instead of flat panels keep their outlines in plan, so the aperture and its many-sided rim stay what they are
 * and only the shape between the edges counts. Without hub and gaps the whole outline is mirror; panels stay where
 * they are and where a place is filled it lies in the surface of the panel beside it (in the hub: a flat piece at the
 * height of the innermost corners, or the paraboloid).
 */
public final class Flaws {
    /** Name of the loss from panels that do not follow the paraboloid; words name it after the cut. */
    public static final String FLAT_PANELS = "flat panels";

    /** Name of the loss to all that is bare; words name what there is of it. */
    public static final String HUB_AND_GAPS = "hub and gaps";

    /** Every flaw, from the dish over its mirrors and the aim to the pan. */
    public static final List<Flaw> ALL = List.of(
            Flaw.of(
                            "flat-panels",
                            FLAT_PANELS,
                            BY_HAND,
                            "Bend the panels, or take more and narrower ones.",
                            s -> s.withDish(Perfected.curved(s.dish())))
                    .byZone((s, zone) -> s.withDish(s.dish().withZone(zone, Perfected::curved)))
                    .fixedIn(Flaws::isMesh),
            Flaw.of(
                            "hub-and-gaps",
                            HUB_AND_GAPS,
                            BY_HAND,
                            "Close the hole in the middle and the slits between panels.",
                            s -> s.withDish(Perfected.filled(s.dish())))
                    .fixedIn(Flaws::isMesh),
            Flaw.of(
                    "rib-curve",
                    "curve of the ribs",
                    BY_HAND,
                    "Cut the ribs to the parabola: cut draws it.",
                    s -> s.withDish(s.dish().onParabola())),
            mirror(
                            "slope-error",
                            "slope error",
                            BY_HAND,
                            "Use a stiffer backing under the film and glue it without waves.",
                            m -> m.withSlopeError(0))
                    .sizedByMirror(DEVIATION, Mirror::slopeErrorRadians),
            mirror(
                            "panel-tilt",
                            "panel tilt",
                            BY_HAND,
                            "Glue the panels down against a straight edge, each square to its ribs.",
                            m -> m.withPanelTilt(0))
                    .sizedByMirror(DEVIATION, Mirror::panelTiltRadians),
            mirror(
                            "beam-spread",
                            "beam spread",
                            BY_BUYING,
                            "Use a film or mirror that blurs less.",
                            m -> m.withBeamSpread(0).withWideShare(0))
                    .sizedByMirror(DEVIATION, Mirror::beamSpreadRadians),
            work(
                    "rib-cut",
                    "ribs cut untrue",
                    "Cut the ribs closer to the line; clamp and sand them together.",
                    BuildErrors.Cause.RIB_CUT),
            work(
                    "rib-set",
                    "ribs set untrue",
                    "Set each rib with a template before the glue is dry.",
                    BuildErrors.Cause.RIB_SET),
            work(
                    "sag",
                    "uneven sheet",
                    "Lay the sheet alike between all ribs: bend or stretch every panel the same way.",
                    BuildErrors.Cause.SAG),
            work("panel-edge", "panels cut short", "Cut the panels closer to the line.", BuildErrors.Cause.PANEL_EDGE),
            work(
                    "bubbles",
                    "bubbles",
                    "Glue the film wet and press the bubbles out from the middle.",
                    BuildErrors.Cause.BUBBLES),
            shape(
                    ShapeError.SHEET_SAG,
                    "Support the sheet midway between the ribs, or take thicker sheet or more ribs."),
            shape(
                    ShapeError.SHEET_BULGE,
                    "Screw or clamp the sheet flat between the ribs; glue film without pushing it up."),
            shape(
                    ShapeError.SPRINGBACK,
                    "Screw the sheet to ribs that hold its curve, or bend it deeper than planned."),
            shape(ShapeError.DISH_SAG, "Brace the rim against the mount, or take deeper ribs."),
            shape(ShapeError.TWIST, "Lay the rim on a flat floor and brace it there before the glue is dry."),
            shape(ShapeError.RIM_PULLED_IN, "Loosen hoop, wire or struts until the rim is as wide as planned."),
            Flaw.of(
                    "ribs-as-built",
                    "ribs not as planned",
                    BY_HAND,
                    "Sand or pack the ribs that cut names first.",
                    s -> s.withDish(MeasuredRibs.mended(s.dish()))),
            Flaw.of(
                    "measured-shape",
                    "the shape as measured",
                    BY_HAND,
                    "Push dents out and pack hollows where the points lie farthest off the paraboloid.",
                    s -> s.withDish(MeasuredMirror.mended(s.dish()))),
            mirror("reflectance", "reflectance", BY_BUYING, "Use a brighter film or mirror.", m -> m.withReflectance(1))
                    .sizedByMirror(SHARE, Mirror::reflectance),
            mirror(
                            "scatter",
                            "scatter",
                            BY_BUYING,
                            "Use a smoother film or mirror; polish scratches out.",
                            m -> m.withScattered(0))
                    .sizedByMirror(SHARE, Mirror::scattered),
            mirror("dust", "dust", BY_HAND, "Wipe the mirrors before cooking.", m -> m.withDust(0))
                    .sizedByMirror(SHARE, Mirror::dust),
            aim("drift", "drift", "Aim again sooner.", a -> a.withDrift(0, 0))
                    .sized(
                            SKY_ANGLE,
                            s -> Math.hypot(s.aim().driftUpRadians(), s.aim().driftSideRadians())),
            aim("turn", "turn", "Aim by the shadow of a pin that stands square on the dish.", a -> a.withTurn(0, 0))
                    .sized(
                            SKY_ANGLE,
                            s -> Math.hypot(s.aim().turnUpRadians(), s.aim().turnSideRadians())),
            aim("jitter", "jitter", "Stiffen the stand, or cook out of the wind.", a -> a.withJitter(0))
                    .sized(DEVIATION, s -> s.aim().jitterRadians()),
            Flaw.of("pan-shadow", "the pan\u2019s shadow", NEVER, "", Flaws::withoutShadow),
            Flaw.of(
                    "grate-and-arm",
                    "grate and arm",
                    BY_HAND,
                    "Use thinner bars, or fewer of them.",
                    Flaws::withoutSupport),
            Flaw.of(
                    "pan-place",
                    "pan out of place",
                    BY_HAND,
                    "Stand the pan at the focus.",
                    s -> s.withStand(Stand.AT_FOCUS)));

    private Flaws() {}

    /** Those that a scenario can have: what zones can differ in, once for each of them. */
    static List<Flaw> of(Scenario scenario) {
        return ALL.stream().flatMap(flaw -> flaw.in(scenario)).toList();
    }

    /** The scenario without any of {@code flaws}. */
    static Scenario mended(Scenario scenario, List<Flaw> flaws) {
        Scenario out = scenario;
        for (Flaw flaw : flaws) {
            out = flaw.mended(out);
        }
        return out;
    }

    private static Flaw mirror(
            String key, String name, Flaw.Mending mending, String advice, UnaryOperator<Mirror> remedy) {
        return Flaw.of(key, name, mending, advice, s -> s.withMirrors(remedy))
                .byZone((s, zone) -> s.withMirror(zone, remedy));
    }

    private static Flaw aim(String key, String name, String advice, UnaryOperator<Aim> remedy) {
        return Flaw.of(key, name, BY_HAND, advice, s -> s.withAim(remedy.apply(s.aim())));
    }

    private static Flaw work(String key, String name, String advice, BuildErrors.Cause cause) {
        return Flaw.of(
                        key,
                        name,
                        BY_HAND,
                        advice,
                        s -> s.withWorkmanship(s.workmanship().without(cause)))
                .sizedBy(s ->
                        Optional.ofNullable(s.workmanship().parts().get(cause)).map(Flaws::size));
    }

    private static Flaw shape(ShapeError error, String advice) {
        return Flaw.of(
                        error.key(),
                        error.words(),
                        BY_HAND,
                        advice,
                        s -> s.withShape(s.shape().with(error, 0)))
                .sized(LENGTH, s -> s.shape().of(error));
    }

    private static FlawSize size(BuildErrors.Part part) {
        return part.gap() > 0 ? new FlawSize(part.gap(), LENGTH) : new FlawSize(part.perAxis(), DEVIATION);
    }

    private static boolean isMesh(Scenario s) {
        return !s.dish().cut().has(CutTrait.PARABOLOID);
    }

    private static Scenario withoutSupport(Scenario s) {
        return s.target() instanceof Pan pan ? s.withTarget(pan.withSupport(Support.NONE)) : s;
    }

    private static Scenario withoutShadow(Scenario s) {
        return s.target() instanceof Pan pan ? s.withTarget(pan.withoutShadow()) : s;
    }
}

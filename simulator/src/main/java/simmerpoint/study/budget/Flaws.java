package simmerpoint.study.budget;

import static simmerpoint.study.budget.FlawSize.Kind.DEVIATION;
import static simmerpoint.study.budget.FlawSize.Kind.LENGTH;
import static simmerpoint.study.budget.FlawSize.Kind.SHARE;
import static simmerpoint.study.budget.FlawSize.Kind.SKY_ANGLE;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.dish.cut.Perfected;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;

/**
 * All flaws a budget knows: add another one to {@link #ALL} and everything else follows. The sun's size, its beam, the
 * pan's size and what its finish takes up are no flaws: no care of a builder's can mend them.
 *
 * <p>Curved instead of flat panels keep their outlines in plan, so the aperture and its many-sided rim stay what they are
 * and only the shape between the edges counts. Without hub and gaps the whole outline is mirror; panels stay where
 * they are and where a place is filled it lies in the surface of the panel beside it (in the hub: a flat piece at the
 * height of the innermost corners, or the paraboloid).
 */
public final class Flaws {
    /** Every flaw, from the dish over its mirrors and the aim to the pan. */
    public static final List<Flaw> ALL = List.of(
            Flaw.of("flat-panels", "flat panels", s -> s.withDish(Perfected.curved(s.dish())))
                    .fixedIn(Flaws::isMesh),
            Flaw.of("hub-and-gaps", "hub and gaps", s -> s.withDish(Perfected.filled(s.dish())))
                    .fixedIn(Flaws::isMesh),
            mirror("slope-error", "slope error", m -> m.withSlopeError(0))
                    .sized(DEVIATION, s -> s.mirror().slopeErrorRadians()),
            mirror("panel-tilt", "panel tilt", m -> m.withPanelTilt(0))
                    .sized(DEVIATION, s -> s.mirror().panelTiltRadians()),
            mirror("beam-spread", "beam spread", m -> m.withBeamSpread(0).withWideShare(0))
                    .sized(DEVIATION, s -> s.mirror().beamSpreadRadians()),
            work("rib-cut", "ribs cut untrue", BuildErrors.Cause.RIB_CUT),
            work("rib-set", "ribs set untrue", BuildErrors.Cause.RIB_SET),
            work("sag", "sagging sheet", BuildErrors.Cause.SAG),
            work("panel-edge", "panels cut short", BuildErrors.Cause.PANEL_EDGE),
            work("bubbles", "bubbles", BuildErrors.Cause.BUBBLES),
            Flaw.of("ribs-as-built", "ribs not as planned", s -> s.withDish(MeasuredRibs.mended(s.dish()))),
            mirror("reflectance", "reflectance", m -> m.withReflectance(1))
                    .sized(SHARE, s -> s.mirror().reflectance()),
            mirror("scatter", "scatter", m -> m.withScattered(0))
                    .sized(SHARE, s -> s.mirror().scattered()),
            mirror("dust", "dust", m -> m.withDust(0))
                    .sized(SHARE, s -> s.mirror().dust()),
            aim("drift", "drift", a -> a.withDrift(0, 0))
                    .sized(
                            SKY_ANGLE,
                            s -> Math.hypot(s.aim().driftUpRadians(), s.aim().driftSideRadians())),
            aim("turn", "turn", a -> a.withTurn(0, 0))
                    .sized(
                            SKY_ANGLE,
                            s -> Math.hypot(s.aim().turnUpRadians(), s.aim().turnSideRadians())),
            aim("jitter", "jitter", a -> a.withJitter(0))
                    .sized(DEVIATION, s -> s.aim().jitterRadians()),
            Flaw.of("pan-shadow", "the pan\u2019s shadow", Flaws::withoutShadow),
            Flaw.of("grate-and-arm", "grate and arm", Flaws::withoutSupport),
            Flaw.of("pan-place", "pan out of place", s -> s.withStand(Stand.AT_FOCUS)));

    private Flaws() {}

    /** The scenario without any of {@code flaws}. */
    static Scenario mended(Scenario scenario, List<Flaw> flaws) {
        Scenario out = scenario;
        for (Flaw flaw : flaws) {
            out = flaw.mended(out);
        }
        return out;
    }

    private static Flaw mirror(String key, String name, UnaryOperator<Mirror> remedy) {
        return Flaw.of(key, name, s -> s.withMirror(remedy.apply(s.mirror())));
    }

    private static Flaw aim(String key, String name, UnaryOperator<Aim> remedy) {
        return Flaw.of(key, name, s -> s.withAim(remedy.apply(s.aim())));
    }

    private static Flaw work(String key, String name, BuildErrors.Cause cause) {
        return new Flaw(
                key,
                name,
                s -> s.withWorkmanship(s.workmanship().without(cause)),
                s -> Optional.ofNullable(s.workmanship().parts().get(cause)).map(Flaws::size),
                s -> false);
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

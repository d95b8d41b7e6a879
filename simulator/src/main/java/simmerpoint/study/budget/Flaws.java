package simmerpoint.study.budget;

import java.util.List;
import java.util.function.UnaryOperator;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.cut.Perfected;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Pan;
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
            new Flaw("flat-panels", "flat panels", s -> s.withDish(Perfected.curved(s.dish())), Flaws::isMesh),
            new Flaw("hub-and-gaps", "hub and gaps", s -> s.withDish(Perfected.filled(s.dish())), Flaws::isMesh),
            Flaw.of("slope-error", "slope error", s -> mirror(s, m -> m.withSlopeError(0))),
            Flaw.of("panel-tilt", "panel tilt", s -> mirror(s, m -> m.withPanelTilt(0))),
            Flaw.of(
                    "beam-spread",
                    "beam spread",
                    s -> mirror(s, m -> m.withBeamSpread(0).withWideShare(0))),
            work("rib-cut", "ribs cut untrue", BuildErrors.Cause.RIB_CUT),
            work("rib-set", "ribs set untrue", BuildErrors.Cause.RIB_SET),
            work("sag", "sagging sheet", BuildErrors.Cause.SAG),
            work("panel-edge", "panels cut short", BuildErrors.Cause.PANEL_EDGE),
            work("bubbles", "bubbles", BuildErrors.Cause.BUBBLES),
            Flaw.of("reflectance", "reflectance", s -> mirror(s, m -> m.withReflectance(1))),
            Flaw.of("scatter", "scatter", s -> mirror(s, m -> m.withScattered(0))),
            Flaw.of("dust", "dust", s -> mirror(s, m -> m.withDust(0))),
            Flaw.of("drift", "drift", s -> aim(s, a -> a.withDrift(0, 0))),
            Flaw.of("turn", "turn", s -> aim(s, a -> a.withTurn(0, 0))),
            Flaw.of("jitter", "jitter", s -> aim(s, a -> a.withJitter(0))),
            Flaw.of("pan-shadow", "the pan\u2019s shadow", Flaws::withoutShadow),
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

    private static Scenario mirror(Scenario s, UnaryOperator<Mirror> change) {
        return s.withMirror(change.apply(s.mirror()));
    }

    private static Flaw work(String key, String name, BuildErrors.Cause cause) {
        return Flaw.of(key, name, s -> s.withWorkmanship(s.workmanship().without(cause)));
    }

    private static Scenario aim(Scenario s, UnaryOperator<Aim> change) {
        return s.withAim(change.apply(s.aim()));
    }

    private static boolean isMesh(Scenario s) {
        return !s.dish().cut().has(CutTrait.PARABOLOID);
    }

    private static Scenario withoutShadow(Scenario s) {
        return s.target() instanceof Pan pan ? s.withTarget(pan.withoutShadow()) : s;
    }
}

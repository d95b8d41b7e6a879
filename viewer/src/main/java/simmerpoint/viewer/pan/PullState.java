package simmerpoint.viewer.pan;

import java.util.Optional;
import simmerpoint.drawing.chart.MoveCurve;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanResult;
import simmerpoint.viewer.live.StudyState;

/**
 * Where the pan is pulled to, and what is known of it along that way. All lengths count from the focus, as the file's
 * stand.pull-back does, so that a curve stays where it is while the pan moves along it.
 *
 * @param line the newest curve worth showing; empty before the first
 * @param fits whether it is the curve of this scenario: nothing but the pull-back differs
 * @param working whether a curve is being computed
 * @param done share of that work, 0 to 1
 * @param hasPan whether there is a pan, without which there is no curve
 * @param presentMetres where the pan stands
 * @param lowMetres least pull-back shown
 * @param highMetres largest pull-back shown, above the least
 */
record PullState(
        Optional<MoveCurve> line,
        boolean fits,
        boolean working,
        double done,
        boolean hasPan,
        double presentMetres,
        double lowMetres,
        double highMetres) {
    /** Without a curve the pan can be moved so far either way, as a share of the focal length. */
    private static final double REACH = 0.25;

    private static final double MARGIN = 0.1;

    /**
     * The state after news of scenario or studies.
     *
     * @param before empty for the first
     * @param scenario what is asked for now
     * @param studies how far the studies have come
     * @param held whether somebody has the pan in hand, so that the scale must stay
     */
    static PullState next(Optional<PullState> before, Scenario scenario, StudyState studies, boolean held) {
        Optional<MoveCurve> old = before.flatMap(PullState::line);
        Optional<PanResult> newest = studies.pan();
        boolean hasPan = scenario.cooking().isPresent();
        boolean elsewhere = old.isPresent()
                && newest.filter(n -> reachesElsewhere(n, scenario, old.get())).isPresent();
        boolean oldStays = old.isPresent()
                && fits(old.get().result(), scenario)
                && (held || (inside(old.get(), scenario) && !elsewhere));
        Optional<MoveCurve> line = !hasPan
                ? Optional.empty()
                : oldStays || newest.isEmpty()
                        ? old
                        : fits(newest.get(), scenario) || old.isEmpty() ? Optional.of(lineOf(old, newest.get())) : old;
        boolean fits = line.isPresent() && fits(line.get().result(), scenario);
        double present = scenario.stand().pullBackMetres();
        double reach = REACH * scenario.dish().focalLengthMetres();
        double low = line.map(MoveCurve::low).orElse(-reach);
        double high = line.map(MoveCurve::high).orElse(reach);
        return new PullState(
                line,
                fits,
                studies.working(),
                studies.done(),
                hasPan,
                present,
                Math.min(low, present),
                Math.max(high, present));
    }

    /** Whether a study of this very scenario looks at another stretch than the curve that is shown. */
    private static boolean reachesElsewhere(PanResult study, Scenario scenario, MoveCurve shown) {
        if (!study.base().scenario().equals(scenario)) {
            return false;
        }
        double margin = MARGIN * (shown.high() - shown.low());
        return study.moves().stream()
                .filter(m -> m.move() == MoveStudy.Move.PULL_BACK)
                .anyMatch(m -> Math.abs(m.presentMetres() + m.fromMetres() - shown.low()) > margin
                        || Math.abs(m.presentMetres() + m.toMetres() - shown.high()) > margin);
    }

    private static MoveCurve lineOf(Optional<MoveCurve> old, PanResult result) {
        return old.filter(line -> line.result().equals(result))
                .orElseGet(() -> MoveCurve.of(result, MoveStudy.Move.PULL_BACK));
    }

    /** Whether a study is that of {@code scenario} but for the pull-back. */
    static boolean fits(PanResult study, Scenario scenario) {
        Scenario base = study.base().scenario();
        double step = scenario.stand().pullBackMetres() - base.stand().pullBackMetres();
        if (base.equals(scenario)) {
            return true;
        }
        Scenario moved = base.withStand(MoveStudy.Move.PULL_BACK.from(base.stand(), step));
        Scenario same = scenario.withStand(MoveStudy.Move.PULL_BACK.from(base.stand(), step));
        return sides(base, scenario) && moved.equals(same);
    }

    private static boolean sides(Scenario a, Scenario b) {
        return a.stand().slideMetres() == b.stand().slideMetres()
                && a.stand().raiseMetres() == b.stand().raiseMetres()
                && a.stand().sideMetres() == b.stand().sideMetres();
    }

    private static boolean inside(MoveCurve line, Scenario scenario) {
        double margin = MARGIN * (line.high() - line.low());
        double present = scenario.stand().pullBackMetres();
        boolean within = present >= line.low() + margin && present <= line.high() - margin;
        boolean where = line.move().reaches(present - line.move().presentMetres())
                && line.move().presentMetres() == present;
        return within || where;
    }

    /** What the pan gets where it stands, by the curve; empty where there is none. */
    Optional<PanMove> move() {
        return line.map(MoveCurve::move).filter(m -> fits);
    }
}

package simmerpoint.viewer.answer;

import java.util.Optional;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.answer.trace.TraceSummary;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.StudyState;

/**
 * Everything the answer strip says, as text.
 *
 * @param watts the figure, for instance "623 W"; a dash before the first answer
 * @param meaning what becomes of them
 * @param certainty the likely range, or the figure with its standard error and rays
 * @param doubt what the doubt comes from most; may be empty
 * @param level the heat level; empty for a bare disc or before the first answer
 * @param water what the water does
 * @param aiming when to aim again; empty while that is not known
 * @param loss the largest loss
 * @param safety the caution
 * @param refusal why there is no answer to what is asked now; the rest is then that of the last scenario that had one
 * @param earlier whether the figures are those of an earlier scenario
 * @param done share of the work that is done, 0 to 1
 * @param working whether finer figures will follow
 */
public record StripText(
        String watts,
        String meaning,
        String certainty,
        String doubt,
        Optional<HeatLevel> level,
        String water,
        String aiming,
        String loss,
        String safety,
        Optional<String> refusal,
        boolean earlier,
        double done,
        boolean working) {
    private static final String DASH = "\u2013";

    /**
     * What there is to say.
     *
     * @param state the newest answer; may be null before the first
     * @param studies the slower studies
     * @param wrong how many values are wrong now, so that the answer is to what stood there before
     * @param system units of the figures
     */
    public static StripText of(LiveState state, StudyState studies, int wrong, UnitSystem system) {
        if (state == null || state.result().isEmpty()) {
            Optional<String> refusal = state == null ? Optional.empty() : state.refusal();
            return new StripText(
                    DASH,
                    "",
                    "",
                    "",
                    Optional.empty(),
                    refusal.isEmpty() ? "Tracing light\u2026" : "",
                    "",
                    "",
                    "",
                    refusal,
                    true,
                    0,
                    refusal.isEmpty());
        }
        TraceResult result = state.result().get();
        TraceSummary summary = state.summaries().get(system);
        return new StripText(
                summary.watts(),
                summary.meaning(),
                result.likely().isPresent()
                        ? summary.certainty()
                        : summary.certainty() + ", "
                                + FigureFormat.count(result.run().rays()) + " rays",
                summary.doubt(),
                summary.level(),
                summary.water().map(TraceSummary.Water::sentence).orElse(""),
                aiming(state, studies),
                summary.largestLoss(),
                summary.safety(),
                wrong > 0 ? Optional.of(notForWhatIsTyped(wrong)) : state.refusal(),
                wrong > 0 || !state.current(),
                state.done(),
                !state.settled());
    }

    private static String notForWhatIsTyped(int wrong) {
        return (wrong == 1 ? "1 value is wrong" : wrong + " values are wrong")
                + ": these figures go by what stood there before.";
    }

    private static String aiming(LiveState state, StudyState studies) {
        boolean over = state.refusal().isPresent()
                || (studies.scenario().filter(state.scenario()::equals).isPresent()
                        && !studies.working()
                        && studies.done() >= 1);
        return studies.timesOf(state.scenario())
                .map(times -> AimAnswer.brief(times) + ".")
                .orElse(over ? "" : "Aiming: being worked out\u2026");
    }

    /** The heat level in a word; empty without one. */
    public String levelWord() {
        return level.map(LevelWords::of).orElse("");
    }

    /** The whole in one line, for whoever listens instead of looking. */
    public String spoken() {
        if (refusal.isPresent()) {
            return refusal.get();
        }
        return String.join(
                        " ",
                        watts + " " + meaning + ".",
                        level.isPresent() ? "Heat level: " + levelWord() + "." : "",
                        water,
                        aiming,
                        loss,
                        safety)
                .replaceAll(" {2,}", " ")
                .strip();
    }
}

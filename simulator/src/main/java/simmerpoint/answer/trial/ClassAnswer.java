package simmerpoint.answer.trial;

import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.quantities.OneLine;
import simmerpoint.trial.ClassResult;
import simmerpoint.trial.ClassResult.Cooker;
import simmerpoint.trial.power.PowerTest;
import simmerpoint.units.UnitSystem;

/** Several built cookers, the best first. */
public final class ClassAnswer {
    private final ClassResult result;
    private final TrialFlawWords flaws;

    private ClassAnswer(ClassResult result, UnitSystem units) {
        this.result = result;
        flaws = new TrialFlawWords(new FigureFormat(units));
    }

    /** In a table. */
    public static Answer brief(ClassResult result, UnitSystem units) {
        return ShortAnswer.of(
                result.scenario().scenario().title(),
                new ClassAnswer(result, units).said(false),
                NextCommand.line(NextCommand.BUDGET));
    }

    /** With sizes and probabilities of flaws. */
    public static Answer of(ClassResult result, UnitSystem units) {
        return new Answer(
                OneLine.of(result.scenario().scenario().title()),
                List.of(new ClassAnswer(result, units).said(true).build()));
    }

    private SectionBuilder said(boolean whole) {
        return Section.headed(verdict())
                .add(Columns.<Cooker>none()
                        .with("cooker", Cooker::name)
                        .with("rank", c -> c.rank() == 0 ? "-" : Integer.toString(c.rank()))
                        .with("power\nW", ClassAnswer::power)
                        .with("boiled in", ClassAnswer::boiled)
                        .with("likeliest flaw", c -> whole ? sized(c) : plain(c))
                        .table(result.cookers()))
                .say("Power is at 50\u00a0K above the air, " + basis()
                        + ", ± half of its 95\u00a0% interval: ranks whose intervals overlap may as well be the other way round."
                        + (result.cookers().stream().allMatch(ClassAnswer::isTold)
                                ? ""
                                : " A question mark: these logs cannot tell it from something else."))
                .say(result.leftOut().entrySet().stream()
                        .map(each -> "Left out: " + each.getKey() + ". " + OneLine.of(each.getValue()))
                        .toList())
                .add(TrialAnswer.CAUTION);
    }

    private String verdict() {
        Cooker best = result.cookers().get(0);
        return best.rank() == 0
                ? "No log tells a cooking power"
                : result.cookers().size() + (result.cookers().size() == 1 ? " cooker" : " cookers") + "; the best is "
                        + best.name() + ", "
                        + FigureFormat.fixed(best.watts().orElseThrow().value(), 0)
                        + "\u00a0W";
    }

    private static String power(Cooker cooker) {
        return cooker.watts()
                .map(w -> FigureFormat.fixed(w.value(), 0) + "\u00a0±\u00a0"
                        + FigureFormat.fixed(Math.ceil(cooker.halfWidth().orElse(0)), 0))
                .orElse("-");
    }

    private static String boiled(Cooker cooker) {
        return cooker.trial()
                .boil()
                .filter(b -> b.measuredSeconds().isPresent())
                .map(b -> HeatWords.time(b.measuredSeconds().getAsDouble()))
                .orElse("-");
    }

    private static String plain(Cooker cooker) {
        return cooker.flaw()
                .map(f -> TrialFlawWords.plain(f.flaw()) + (isTold(cooker) ? "" : "?"))
                .orElse(cooker.rank() == 0 ? "-" : isTold(cooker) ? "none" : "none?");
    }

    private static boolean isTold(Cooker cooker) {
        return cooker.trial().fit().map(fit -> fit.isTold()).orElse(true);
    }

    private String sized(Cooker cooker) {
        return cooker.flaw()
                .map(f -> flaws.sized(f) + ": " + TrialFlawWords.percent(f.probability()))
                .orElse(plain(cooker));
    }

    private String basis() {
        return switch (result.basis()) {
            case IRRADIANCE -> "by the standard at 700\u00a0W/m² on a plane that faces the sun";
            case BEAM -> "at 700\u00a0W/m² of beam";
            case NOTHING ->
                "in the light as it was, which not all logs measured alike, so that ranks are those of the day";
        };
    }

    /** What a picture says of the powers. */
    public static String basisWords(ClassResult result) {
        return result.basis() == PowerTest.Basis.IRRADIANCE ? "standard cooking power" : "cooking power";
    }
}

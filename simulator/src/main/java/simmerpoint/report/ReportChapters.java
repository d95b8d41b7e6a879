package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.answer.budget.BudgetAnswer;
import simmerpoint.answer.day.DayAnswer;
import simmerpoint.answer.pan.PanAnswer;
import simmerpoint.answer.safety.SafetyAnswer;
import simmerpoint.answer.scenario.ScenarioAnswer;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.drawing.cooker.FieldDrawing;
import simmerpoint.drawing.output.XmlWriter;
import simmerpoint.quantities.Version;
import simmerpoint.safety.SafetyResult;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.FullStudy;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/** The chapters of the page, each an answer with its pictures. */
final class ReportChapters {
    /** Sections of the answer about watts: what the pan gets, cautions, ledger, spot, errors. */
    private static final int GETS = 0;

    /** Sections of the answer about the pan's place without its cautions: here, place, then the moves. */
    private static final int FIRST_MOVE = 2;

    private static final int LEDGER = 2;
    private static final int SPOT = 3;
    private static final int BOTTOM = 4;

    private final FullStudy.Result result;
    private final SafetyResult safety;
    private final UnitSystem system;
    private final TraceResult trace;
    private final Answer answer;

    ReportChapters(FullStudy.Result result, SafetyResult safety, UnitSystem system) {
        this.safety = safety;
        this.result = result;
        this.system = system;
        trace = result.trace();
        answer = TraceAnswer.withoutHint(trace, system);
    }

    private HtmlChapter part(String id, String heading, int section) {
        return HtmlChapter.of(id, heading, List.of(answer.sections().get(section)));
    }

    /** The first thing asked, and the first thing to mind. */
    HtmlChapter answer() {
        Section gets = answer.sections().get(GETS);
        Item first = cautions().get(0);
        return part("answer", gets.heading(), GETS).with(1, pen -> {
            new HtmlAnswer(pen, gets.heading()).items(List.of(first));
            pen.open("p", "class", "on")
                    .leaf("a", "All cautions", "href", "#care")
                    .close("p")
                    .line();
        });
    }

    HtmlChapter dish(CheckedScenario read) {
        return HtmlChapter.of("dish", "What the scenario says", ScenarioAnswer.of(read, system));
    }

    HtmlChapter light() {
        return part("light", "Where the light lands", SPOT).with(0, FluxFigure.of(trace, system));
    }

    /** How hot the pan's bottom gets; empty for a bare disc. */
    Optional<HtmlChapter> bottom() {
        return trace.heat()
                .map(heat -> part("bottom", answer.sections().get(BOTTOM).heading(), BOTTOM));
    }

    HtmlChapter ledger() {
        Section ledger = answer.sections().get(LEDGER);
        return part("ledger", ledger.heading(), LEDGER);
    }

    HtmlChapter pan(PanResult pan) {
        HtmlChapter chapter = HtmlChapter.of("pan", "Where to put the pan", PanAnswer.of(pan, system));
        for (int k = 0; k < pan.moves().size(); k++) {
            HtmlFigure figure = MoveFigure.of(pan.moves().get(k), pan, system);
            chapter = chapter.inside(FIRST_MOVE + k, 0, figure);
        }
        return chapter;
    }

    HtmlChapter day(DayResult day) {
        String date = TimeWords.date(day.plan().date());
        HtmlChapter chapter = HtmlChapter.of("day", "On " + date, DayAnswer.withoutHint(day, system));
        return day.curve().isEmpty() ? chapter : chapter.inside(0, 1, DayPicture.figure(day));
    }

    HtmlChapter aim(AimResult aim) {
        return HtmlChapter.of("aim", "How to aim", AimAnswer.withoutHint(aim, system))
                .inside(0, 1, AimFigure.of(aim, system));
    }

    HtmlChapter safety() {
        FieldDrawing light = FieldDrawing.of(safety.taken(), safety.people(), system);
        return HtmlChapter.of("safety", "What it can burn", SafetyAnswer.of(safety, system))
                .inside(
                        0,
                        1,
                        HtmlFigure.drawing(
                                light,
                                "The cooker from its side with the light around its focus, the pan taken away, coloured by what"
                                        + " it can do, and a grown-up who stands as near as is safe in the strongest sun.",
                                "The light around the focus with the pan taken away, by what it can do."));
    }

    HtmlChapter budget(BudgetResult budget) {
        return HtmlChapter.of("budget", "What the flaws cost", BudgetAnswer.of(budget, system))
                .inside(0, 1, BudgetPicture.figure(budget, system));
    }

    /** The cautions for all chapters together, by the hottest light of them. */
    List<Item> cautions() {
        return cautions(result, safety);
    }

    static List<Item> cautions(FullStudy.Result result, SafetyResult safety) {
        TraceResult trace = result.trace();
        String noun = TargetWords.of(trace.scenario().target()).noun();
        List<Item> items = new ArrayList<>(
                safety.cautionFlux() >= result.cautionFlux()
                        ? Cautions.itemsAround(safety.cautionFlux(), noun)
                        : Cautions.items(result.cautionFlux(), noun));
        if (result.pan().isPresent()) {
            items.add(PanAnswer.moving());
        }
        return items;
    }

    static HtmlChapter care(List<Item> cautions) {
        return HtmlChapter.of("care", Cautions.HEADING, List.of())
                .with(0, pen -> new HtmlAnswer(pen, Cautions.HEADING).items(cautions));
    }

    /** Errors and origin of all figures, chapter by chapter, and how to get the same page again. */
    HtmlChapter howItWasWorkedOut(List<HtmlChapter> chapters, String fileName, List<String> logs) {
        HtmlChapter own = HtmlChapter.of("origin", "How this was worked out", List.of());
        return own.with(0, pen -> {
            errors(
                    part(
                            "answer",
                            answer.sections().get(GETS).heading(),
                            answer.sections().size() - 1),
                    pen);
            chapters.forEach(chapter -> errors(chapter, pen));
            pen.leaf("h3", "The same page again").line();
            pen.leaf(
                            "p",
                            "Simmerpoint " + Version.text()
                                    + ", a program that casts sun rays onto the dish by the laws of"
                                    + " mirrors and of chance, made this page. The same scenario, version and seed give the"
                                    + " same page, byte by byte, on any computer:")
                    .line();
            pen.open("pre").leaf("code", command(fileName, logs)).close("pre").line();
        });
    }

    private static void errors(HtmlChapter chapter, XmlWriter pen) {
        if (!chapter.errors().isEmpty()) {
            pen.leaf("h3", chapter.heading()).line();
            new HtmlAnswer(pen, chapter.heading()).items(chapter.errors());
        }
    }

    private static String plain(String name, String otherwise) {
        return name.matches("[A-Za-z0-9._-]+") ? name : otherwise;
    }

    private String command(String fileName, List<String> logs) {
        StringBuilder line = new StringBuilder("simmerpoint report ").append(plain(fileName, "scenario.yaml"));
        logs.forEach(log -> line.append(" --log ").append(plain(log, "log.csv")));
        if (trace.run().rays() != TraceOptions.DEFAULT_RAYS) {
            line.append(" --rays ").append(trace.run().rays());
        }
        if (trace.seed() != TraceOptions.DEFAULT_SEED) {
            line.append(" --seed ").append(trace.seed());
        }
        return system == UnitSystem.INCH ? line.append(" --units inch").toString() : line.toString();
    }
}

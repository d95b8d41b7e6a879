package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Item;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.answer.day.DayAnswer;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.drawing.output.XmlWriter;
import simmerpoint.safety.SafetyResult;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.FullStudy;
import simmerpoint.units.UnitSystem;

/**
 * What fills the first printed sheet below the four figures: the cooker drawn with its sizes, a few lines, the cautions. All
 * else on the page is an appendix to it.
 */
record FirstSheet(FullStudy.Result result, SafetyResult safety, UnitSystem system) {
    void write(XmlWriter pen) {
        Scenario scenario = result.trace().scenario();
        pen.open("div", "class", "pair").line();
        SideFigure.of(scenario, system).write(pen);
        FrontFigure.of(scenario, system).write(pen);
        pen.close("div").line();
        HtmlAnswer answer = new HtmlAnswer(pen, "In short");
        answer.items(inShort());
        answer.items(ReportChapters.cautions(result, safety));
    }

    /** The named figures of the short answers. */
    private List<Item> inShort() {
        List<Item> items = new ArrayList<>();
        TraceAnswer.brief(result.trace(), system).sections().get(0).items().stream()
                .filter(Item.Figure.class::isInstance)
                .forEach(items::add);
        result.aim().ifPresent(aim -> items.add(new Item.Figure("aiming", AimAnswer.brief(aim.times()))));
        result.day().ifPresent(day -> items.add(DayAnswer.hours(day, system)));
        return items;
    }
}

package simmerpoint.report;

import java.util.List;
import simmerpoint.drawing.output.XmlText;
import simmerpoint.drawing.output.XmlWriter;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.checks.CheckedScenario;

/** The scenario's own text, to be copied into a file, and what was odd in it. */
final class ScenarioChapter {
    private ScenarioChapter() {}

    static HtmlChapter of(CheckedScenario read, String fileName) {
        return HtmlChapter.of("scenario", "The scenario", List.of()).with(0, pen -> write(read, fileName, pen));
    }

    private static void write(CheckedScenario read, String fileName, XmlWriter pen) {
        pen.leaf(
                        "p",
                        "Everything on this page follows from this text. Copied into a file, for instance "
                                + XmlText.cut(OneLine.of(fileName), 80)
                                + ", it can be changed and worked out anew.")
                .line();
        read.scenario()
                .dish()
                .cut()
                .fileName()
                .ifPresent(name -> pen.leaf(
                                "p",
                                "Its panels were drawn elsewhere: the file "
                                        + XmlText.cut(OneLine.of(name), 80)
                                        + " belongs to it and is not part of this page.")
                        .line());
        pen.open("pre", "tabindex", "0", "aria-label", "Text of the scenario")
                .leaf("code", read.sourceText())
                .close("pre")
                .line();
        if (!read.warnings().isEmpty()) {
            pen.leaf("h3", "What is odd in it").line().open("ul").line();
            read.warnings()
                    .forEach(warning -> pen.leaf("li", OneLine.of(warning)).line());
            pen.close("ul").line();
        }
    }
}

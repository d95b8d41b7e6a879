package simmerpoint.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import simmerpoint.answer.Item;
import simmerpoint.answer.trace.KeyFigures;
import simmerpoint.drawing.output.XmlText;
import simmerpoint.drawing.output.XmlWriter;
import simmerpoint.quantities.OneLine;
import simmerpoint.safety.SafetyResult;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.FullStudy;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CookerStudy;

/**
 * Everything about one cooker on one page that a builder can send to a friend: it stands alone, opens without a net,
 * prints, and holds nothing that differs from run to run.
 */
public final class CookerReport {
    private static final String NAMELESS = "A solar cooker";
    private static final int LONGEST_HEADING = 160;

    private final CheckedScenario read;
    private final FullStudy.Result result;
    private final CookerStudy all;
    private final SafetyResult safety;
    private final UnitSystem system;
    private final String fileName;

    private CookerReport(
            CheckedScenario read, CookerStudy all, SafetyResult safety, UnitSystem system, String fileName) {
        this.safety = safety;
        this.read = read;
        this.all = all;
        this.result = all.answers();
        this.system = system;
        this.fileName = fileName;
    }

    /**
     * The bytes of the page, UTF-8.
     *
     * @param read the scenario, its text and what is odd in it
     * @param all what was found
     * @param safety what its light can burn
     * @param fileName name of the scenario's file, without folders
     * @param system units of the page
     */
    public static byte[] bytes(
            CheckedScenario read, CookerStudy all, SafetyResult safety, String fileName, UnitSystem system) {
        return new CookerReport(read, all, safety, system, fileName).bytes();
    }

    /** Whether {@code text}, the begin of a file, is that of a page of ours. */
    public static boolean isOurs(String text) {
        return text.contains(HtmlPage.MARK);
    }

    private byte[] bytes() {
        String words = OneLine.of(result.trace().scenario().title());
        String title = words.isEmpty() ? NAMELESS : words;
        List<HtmlChapter> chapters = chapters();
        return HtmlPage.bytes(title, pen -> {
            pen.open("header", "class", "sheet").line();
            pen.leaf("h1", XmlText.cut(title, LONGEST_HEADING), "dir", "auto").line();
            pen.leaf(
                            "p",
                            "A hand-built solar cooker, worked out before it is built: what it gives, how it stands, what it"
                                    + " can burn.",
                            "class",
                            "subtitle")
                    .line();
            keyFigures(pen);
            new FirstSheet(result, safety, system).write(pen);
            pen.close("header").line();
            HtmlPage.contents(chapters, pen);
            pen.open("main").line();
            chapters.forEach(chapter -> chapter.write(pen));
            pen.close("main").line();
        });
    }

    private void keyFigures(XmlWriter pen) {
        pen.open("dl", "class", "key").line();
        for (Item.Figure figure : KeyFigures.of(result.trace(), system)) {
            pen.open("div")
                    .leaf("dt", figure.label())
                    .leaf("dd", figure.value())
                    .close("div")
                    .line();
        }
        pen.close("dl").line();
    }

    /** The chapters in the order in which a builder asks. */
    private List<HtmlChapter> chapters() {
        ReportChapters make = new ReportChapters(result, safety, system);
        List<HtmlChapter> chapters = new ArrayList<>();
        chapters.add(make.answer());
        chapters.add(make.dish(read));
        chapters.add(make.light());
        make.bottom().ifPresent(chapters::add);
        chapters.add(make.ledger());
        result.pan().ifPresent(pan -> chapters.add(make.pan(pan)));
        result.day().ifPresent(day -> chapters.add(make.day(day)));
        result.aim().ifPresent(aim -> chapters.add(make.aim(aim)));
        chapters.add(make.safety());
        chapters.add(make.budget(result.budget()));
        chapters.add(CutFiles.chapter(all, system));
        chapters.add(care(chapters));
        chapters.add(ScenarioChapter.of(read, fileName));
        chapters.add(make.howItWasWorkedOut(chapters, fileName));
        return chapters;
    }

    /** The cautions of all chapters, those by the hottest light first. */
    private HtmlChapter care(List<HtmlChapter> chapters) {
        Set<Item> all = new LinkedHashSet<>(new ReportChapters(result, safety, system).cautions());
        chapters.stream()
                .flatMap(chapter -> chapter.cautions().stream())
                .filter(item -> !HtmlChapter.isGeneral(item))
                .forEach(all::add);
        return ReportChapters.care(new ArrayList<>(all));
    }
}

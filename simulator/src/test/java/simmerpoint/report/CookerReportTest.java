package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.day.DayAnswer;
import simmerpoint.answer.pan.PanAnswer;
import simmerpoint.quantities.Version;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.day.DayPlan;
import simmerpoint.study.day.DayStudy;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;

/** The page as a tree, read by the XML parser of the JDK: it is written well formed. */
@Tag("slow")
class CookerReportTest {
    private static String lake;
    private static String nasty;
    private static Document tree;

    @BeforeAll
    static void page() throws Exception {
        lake = ReportPages.demo("lake-hut-evening.yaml", UnitSystem.METRIC, 1);
        tree = parsed(lake);
        nasty = ReportPages.nasty();
    }

    private static Document parsed(String page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(null);
        return builder.parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> all(Node in, String tag) {
        NodeList found =
                in instanceof Document d ? d.getElementsByTagName(tag) : ((Element) in).getElementsByTagName(tag);
        List<Element> elements = new ArrayList<>();
        for (int k = 0; k < found.getLength(); k++) {
            elements.add((Element) found.item(k));
        }
        return elements;
    }

    private static String words(Element element) {
        return element.getTextContent().replace('\u00a0', ' ').strip();
    }

    @Test
    void oneThreadOrTwoGiveTheSameBytes() throws Exception {
        assertEquals(lake, ReportPages.demo("lake-hut-evening.yaml", UnitSystem.METRIC, 2));
    }

    @Test
    void chaptersComeInTheBuildersOrder() {
        assertEquals(
                List.of(
                        "What the pan gets",
                        "What the scenario says",
                        "Where the light lands",
                        "How hot the pan's bottom gets",
                        "Where the sunlight goes",
                        "Where to put the pan",
                        "On 14 August 2026",
                        "How to aim",
                        "What it can burn",
                        "What the flaws cost",
                        "What to cut",
                        "Take care",
                        "The scenario",
                        "How this was worked out"),
                all(tree, "h2").stream().map(CookerReportTest::words).toList());
        assertEquals(
                all(tree, "section").stream()
                        .map(s -> "#" + s.getAttribute("id"))
                        .toList(),
                all(all(tree, "nav").get(0), "a").stream()
                        .map(a -> a.getAttribute("href"))
                        .toList());
    }

    /** Watts, minutes, the level and centimetres stand first, in the words of the terminal. */
    @Test
    void keyFiguresFirst() {
        Element key = all(tree, "dl").get(0);
        List<String> values =
                all(key, "dd").stream().map(CookerReportTest::words).toList();
        assertEquals(4, values.size());
        assertTrue(values.get(0).matches("about \\d+ W \\(\\d+ to \\d+ W\\)"), values.toString());
        assertTrue(values.get(1).matches("\\d+ to \\d+ min(, then simmers)?|\\d+ min or never"), values.toString());
        assertTrue(values.get(3).matches("\\d+ cm"), values.toString());
        Element first = all(all(tree, "section").get(0), "p").get(0);
        assertTrue(
                words(first)
                        .matches("About \\d+ W \\(four in five such cookers: \\d+ to \\d+ W\\) go into the water\\..*"),
                words(first));
    }

    /** Whatever the commands pan and day say of the same scenario stands in the page, word by word. */
    @Test
    void theWordsAreThoseOfTheCommands() throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("..", "scenarios", "lake-hut-evening.yaml"));
        TraceOptions options = TraceOptions.defaults().withRays(ReportPages.RAYS);
        Answer pan = PanAnswer.of(PanStudy.run(read, options, Progress.NONE), UnitSystem.METRIC);
        DayPlan plan = DayPlan.hourly(LocalDate.of(2026, 8, 14));
        Answer day = DayAnswer.withoutHint(DayStudy.run(read, plan, options, Progress.NONE), UnitSystem.METRIC);
        String page = words(tree.getDocumentElement());
        for (Section section :
                Stream.concat(pan.sections().stream(), day.sections().stream()).toList()) {
            for (Item item : section.items()) {
                if (item instanceof Item.Sentence sentence) {
                    assertTrue(page.contains(sentence.text().replace('\u00a0', ' ')), sentence.text());
                } else if (item instanceof Item.Figure figure) {
                    assertTrue(page.contains(figure.value().replace('\u00a0', ' ')), figure.value());
                }
            }
        }
    }

    @Test
    void headingsDescendStepByStep() {
        assertEquals(1, all(tree, "h1").size());
        int last = 0;
        for (Element element : all(tree, "*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int level = element.getTagName().charAt(1) - '0';
                assertTrue(level <= last + 1, words(element));
                assertFalse(words(element).isEmpty());
                last = level;
            }
        }
    }

    @Test
    void whoeverCannotSeeIsToldToo() {
        assertEquals(12, all(tree, "figure").size());
        for (Element svg : all(tree, "svg")) {
            boolean told = !svg.getAttribute("aria-label").isEmpty()
                    && svg.getAttribute("role").equals("img");
            assertTrue(told || svg.getAttribute("aria-hidden").equals("true"));
            assertTrue(!told || svg.getAttribute("aria-label").length() > 30);
        }
        all(tree, "figure").forEach(f -> assertEquals(1, all(f, "figcaption").size()));
        for (Element table : all(tree, "table")) {
            assertEquals(1, all(table, "caption").size());
            all(table, "th").forEach(th -> assertTrue(th.getAttribute("scope").matches("col|row")));
            int columns = all(all(table, "thead").get(0), "th").size();
            all(all(table, "tbody").get(0), "tr")
                    .forEach(row -> assertEquals(columns, row.getChildNodes().getLength()));
        }
        assertEquals("en", tree.getDocumentElement().getAttribute("lang"));
    }

    @Test
    void everyIdIsUsedOnceAndEveryLinkLeadsSomewhere() {
        Set<String> ids = new HashSet<>();
        for (Element element : all(tree, "*")) {
            if (element.hasAttribute("id")) {
                assertTrue(ids.add(element.getAttribute("id")), element.getAttribute("id"));
            }
        }
        for (Element element : all(tree, "*")) {
            if (element.getTagName().equals("a")) {
                assertTrue(ids.contains(element.getAttribute("href").substring(1)));
            }
            if (element.hasAttribute("aria-labelledby")) {
                assertTrue(ids.contains(element.getAttribute("aria-labelledby")));
            }
        }
    }

    /** Nothing is asked of anywhere: no address but places in the page and pictures held in it, no script, no handler. */
    @Test
    void standsAlone() throws Exception {
        standsAlone(tree, lake);
        standsAlone(parsed(nasty), nasty);
    }

    private static void standsAlone(Document page, String text) {
        for (Element element : all(page, "*")) {
            assertFalse(element.getTagName()
                    .matches("script|link|iframe|object|embed|base|form|audio|vi[d]eo|source|animate"));
            for (int k = 0; k < element.getAttributes().getLength(); k++) {
                Node attribute = element.getAttributes().item(k);
                String name = attribute.getNodeName();
                assertFalse(name.startsWith("on") || name.equals("style"), name);
                if (name.matches("href|src|srcset|action|data|poster|xlink:href|background")) {
                    assertTrue(attribute.getNodeValue().matches("(?s)#.*|data:image/png;base64,.*"));
                }
            }
        }
        String sheet = all(page, "style").get(0).getTextContent();
        assertFalse(sheet.contains("url(") || sheet.contains("@import"));
        Element rule = all(page, "meta").get(1);
        assertEquals("Content-Security-Policy", rule.getAttribute("http-equiv"));
        assertTrue(rule.getAttribute("content").startsWith("default-src 'none'; img-src data:; style-src 'sha256-"));
        assertFalse(rule.getAttribute("content").contains("unsafe"));
        assertTrue(text.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"));
    }

    @Test
    void whateverTheScenarioSaysStaysText() throws Exception {
        Document page = parsed(nasty);
        String source = all(page, "pre").get(0).getTextContent();
        // As it is, but for what would turn its letters round unseen: that is shown.
        String shown = ReportPages.NASTY.replace("\u202e", "[U+202E]").replace("\u2066", "[U+2066]");
        assertTrue(source.startsWith("# " + shown + "\n"), source.substring(0, Math.min(400, source.length())));
        String heading = words(all(page, "h1").get(0));
        assertTrue(heading.startsWith("</pre></title></style></svg><script>"), heading);
        assertTrue(heading.length() <= 170 && heading.endsWith("\u2026"), heading);
        assertEquals("auto", all(page, "h1").get(0).getAttribute("dir"));
        assertTrue(all(page, "title").get(0).getTextContent().length() <= 120);
    }

    /** Every caution of the single answers is among those of the page, or a stronger one of its kind. */
    @Test
    void cautionsAreGatheredAndTheFirstStandsByTheAnswer() {
        List<Element> sections = all(tree, "section");
        List<String> care =
                all(sections.get(11), "p").stream().map(CookerReportTest::words).toList();
        assertEquals(11, care.size());
        care.forEach(text -> assertTrue(text.startsWith("Caution: "), text));
        assertTrue(care.get(3).contains("cover the mirror first"));
        assertTrue(care.get(4).contains("Aim by the shadow of a stick"));
        assertTrue(words(sections.get(7)).contains(care.get(4)), "it stands where aiming is told, too");
        assertEquals(new HashSet<>(care).size(), care.size());
        assertTrue(words(sections.get(0)).contains(care.get(0)));
        assertTrue(words(sections.get(6)).contains("Caution: The pan stands too high"), "hints to an hour stay there");
    }

    @Test
    void theOriginOfTheFiguresIsToldAndHowToGetThemAgain() {
        String text = words(all(tree, "section").get(13));
        assertTrue(text.contains("1 024 rays in 16 replicates, seed 1"), text);
        assertTrue(text.contains("Simmerpoint " + Version.text()), text);
        assertTrue(text.endsWith("simmerpoint report lake-hut-evening.yaml --rays 1024"), text);
    }

    @Test
    void aBareDiscHasNoPlaceForAPanAndNoDay() throws Exception {
        Document page = parsed(ReportPages.page(
                ScenarioReader.parse(
                        "disc.yaml",
                        "dish: {diameter: 1 m, focal-length: 0.6 m, hub: 8 cm, surface: {cut: smooth}}\n"
                                + "plane: {disc: 20 cm, lean: 10°}\n",
                        Path.of("")),
                "disc.yaml",
                UnitSystem.INCH,
                2));
        List<String> headings =
                all(page, "h2").stream().map(CookerReportTest::words).toList();
        assertEquals("What the disc gets", headings.get(0));
        assertEquals(11, headings.size());
        assertTrue(words(all(page, "svg").get(0)).contains(" in"), "lengths in inches");
        assertFalse(words(all(page, "svg").get(0)).contains(" cm"), "no lengths in centimetres");
        assertEquals("A solar cooker", words(all(page, "h1").get(0)));
    }
}

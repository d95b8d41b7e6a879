package simmerpoint.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.report.ReportPages;
import simmerpoint.units.UnitSystem;

/** The page of {@code report} in a real browser: on a desk, on a phone, on paper. */
@Tag("pages")
class ReportPageTest {
    private static final int DESK = 1280;
    private static final int PHONE = 360;

    /** Whatever sticks out to the right, but for what can be scrolled or is clipped within its own frame. */
    private static final String LAYOUT = "{width: innerWidth, content: document.scrollingElement.scrollWidth,"
            + " height: document.scrollingElement.scrollHeight,"
            + " out: [...document.querySelectorAll('body *')].filter(e => !e.closest('.wide, caption, svg svg')"
            + " && e.getBoundingClientRect().right > innerWidth + 0.5).map(e => e.tagName).slice(0, 9),"
            + " small: [...document.querySelectorAll('svg.drawing text')].filter(e => parseFloat(getComputedStyle(e).fontSize)"
            + " * e.closest('svg.drawing').getBoundingClientRect().width / 360 < 10).map(e => e.textContent),"
            + " cut: [...document.querySelectorAll('svg.drawing text')].filter(e => {"
            + " const r = e.getBoundingClientRect(), s = e.closest('svg.drawing').getBoundingClientRect();"
            + " return r.left < s.left - 1 || r.right > s.right + 1 || r.top < s.top - 1 || r.bottom > s.bottom + 1})"
            + ".map(e => e.textContent), title: document.title, broken: [...document.images].filter(i => !i.naturalWidth).length}";

    @TempDir
    static Path folder;

    private static final Map<String, Map<Integer, JsonNode>> layouts = new HashMap<>();
    private static Chromium chromium;

    @BeforeAll
    static void pages() throws Exception {
        Path place = Chromium.keep().orElse(folder);
        Files.createDirectories(place);
        chromium = new Chromium(folder);
        write("lake", ReportPages.demo("lake-hut-evening.yaml", UnitSystem.METRIC, 2));
        write("school", ReportPages.demo("school-yard.yaml", UnitSystem.INCH, 2));
        write("nasty", ReportPages.nasty());
    }

    private static void write(String name, String text) throws IOException {
        Files.writeString(page(name), text);
    }

    private static Path page(String name) {
        return Chromium.keep().orElse(folder).resolve(name + ".html");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lake", "school", "nasty"})
    void nothingSticksOutAndNoLetterIsCut(String name) throws Exception {
        for (Map.Entry<Integer, JsonNode> found : layout(name).entrySet()) {
            int width = found.getKey();
            JsonNode layout = found.getValue();
            assertEquals(width, layout.get("width").asInt(), "the browser took the width asked for");
            assertTrue(layout.get("content").asInt() <= width, layout.toString());
            assertEquals(0, layout.get("out").size(), layout.toString());
            assertEquals(0, layout.get("cut").size(), layout.toString());
            assertEquals(0, layout.get("small").size(), layout.toString());
            assertEquals(0, layout.get("broken").asInt(), layout.toString());
            assertFalse(layout.get("title").asText().equals("broken"), "a script of the scenario has run");
        }
    }

    private static Map<Integer, JsonNode> layout(String name) throws IOException, InterruptedException {
        if (!layouts.containsKey(name)) {
            layouts.put(name, chromium.probe(page(name), LAYOUT, DESK, PHONE));
        }
        return layouts.get(name);
    }

    @Test
    void asksNothingOfTheNetAndComplainsOfNothing() throws Exception {
        assertEquals(List.of(), chromium.asks(page("lake")));
        assertEquals(List.of(), chromium.asks(page("nasty")));
    }

    /** The same look at a page that does ask finds it: both a request and, under our rule, a complaint. */
    @Test
    void aPageThatAsksIsFoundOut() throws Exception {
        String picture = "<img src=\"http://192.0.2.1/picture.png\" alt=\"\"/></body>";
        String lake = Files.readString(page("lake")).replace("</body>", picture);
        Path ruled = Files.writeString(folder.resolve("ruled.html"), lake);
        List<String> complaints = chromium.asks(ruled);
        assertTrue(
                complaints.size() == 1 && complaints.get(0).contains("Content Security Policy"), complaints.toString());
        Path free = Files.writeString(
                folder.resolve("free.html"),
                lake.replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*/>", ""));
        assertTrue(chromium.asks(free).stream().anyMatch(line -> line.contains("picture.png")));
    }

    /** A page of paper holds about 50 lines or a picture: the lake hut's report has some 20 of them. */
    @ParameterizedTest
    @CsvSource({"A4, 14, 28", "letter, 14, 28"})
    void printsOnAFewPages(String size, int least, int most) throws Exception {
        Path pdf = Chromium.keep().orElse(folder).resolve("lake-" + size + ".pdf");
        int pages = chromium.printed(page("lake"), size, pdf);
        assertTrue(pages >= least && pages <= most, pages + " pages of " + size);
    }

    @ParameterizedTest
    @CsvSource({"desk, 1280", "phone, 360"})
    void showsSomethingAllTheWayDown(String name, int width) throws Exception {
        int height = layout("lake").get(width).get("height").asInt();
        Path shot = Chromium.keep().orElse(folder).resolve("lake-" + name + ".png");
        chromium.open(page("lake"), "--window-size=" + width + "," + height, "--screenshot=" + shot);
        BufferedImage image = ImageIO.read(shot.toFile());
        assertEquals(width, image.getWidth());
        int band = 600;
        for (int top = 0; top + band <= image.getHeight(); top += band) {
            assertTrue(colours(image, top, band) > 8, "nothing is seen from " + top + " on");
        }
    }

    private static int colours(BufferedImage image, int top, int height) {
        Set<Integer> colours = new HashSet<>();
        for (int y = top; y < top + height; y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours.size();
    }
}

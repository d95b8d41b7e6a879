package simmerpoint.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.report.ReportPages;
import simmerpoint.units.UnitSystem;

/**
 * What must not be parted by the edge of a printed sheet. Marks are written into the page at the beginning and the end of each such
 * thing, and looked for on the sheets that a real browser prints.
 */
@Tag("pages")
class PrintedSheetsTest {
    private static final Pattern TABLE = Pattern.compile("<table.*?</table>", Pattern.DOTALL);
    private static final Pattern LIST = Pattern.compile("<dl>.*?</dl>", Pattern.DOTALL);
    private static final Pattern PICTURE = Pattern.compile(
            "(<h[23][^>]*>)[^<]*</h[23]>\\s*(<h3>[^<]*</h3>\\s*)?(<p>[^<]*</p>\\s*)?<figure.*?<figcaption>",
            Pattern.DOTALL);
    private static final Pattern MARK = Pattern.compile("q([abc]\\d+)q");

    @TempDir
    static Path folder;

    private int marks;

    @ParameterizedTest
    @CsvSource({
        "tea-kitchen, METRIC, A4",
        "tea-kitchen, INCH, letter",
        "school-yard, METRIC, A4",
        "school-yard, INCH, letter",
        "lake-hut-evening, METRIC, A4",
        "lake-hut-evening, INCH, letter"
    })
    void noTableIsSplitAndNoHeadingPartedFromItsPicture(String name, UnitSystem units, String paper) throws Exception {
        String text = ReportPages.demo(name + ".yaml", units, 2);
        text = marked(text, TABLE, 'a', "<th scope=\"row\">", "</td>");
        text = marked(text, LIST, 'b', "<dt>", "</dd>");
        text = marked(text, PICTURE, 'c', ">", "<figcaption>");
        Path page = Files.writeString(folder.resolve(name + units + ".html"), text);
        Path pdf = Chromium.keep().orElse(folder).resolve("sheets-" + name + "-" + units + ".pdf");
        new Chromium(folder).printed(page, paper, pdf);
        List<List<String>> sheets = sheets(pdf);
        assertTrue(text(pdf, 2).contains("What the pan gets"), "the first sheet is not one sheet");
        List<String> parted = new ArrayList<>();
        for (int k = 0; k < sheets.size(); k++) {
            for (String mark : sheets.get(k)) {
                if (sheets.get(k).stream().filter(mark::equals).count() != 2) {
                    parted.add("sheet " + (k + 1) + ": " + mark);
                }
            }
        }
        assertTrue(marks > 20, "only " + marks + " things were marked");
        assertEquals(List.of(), parted);
        assertEquals(2 * marks, sheets.stream().mapToInt(List::size).sum(), "every mark is printed");
    }

    /** The page with a mark behind the first {@code begin} and one at the last {@code end} of each thing. */
    private String marked(String text, Pattern thing, char kind, String begin, String end) {
        return thing.matcher(text)
                .replaceAll(found -> java.util.regex.Matcher.quoteReplacement(marked(found, kind, begin, end)));
    }

    private String marked(MatchResult found, char kind, String begin, String end) {
        String text = found.group();
        int from = text.indexOf(begin) + begin.length();
        int to = text.lastIndexOf(end) + (end.startsWith("</") ? 0 : end.length());
        String mark = " q" + kind + marks++ + "q ";
        return text.substring(0, from) + mark + text.substring(from, to) + mark + text.substring(to);
    }

    /** The marks on each printed sheet. */
    private static List<List<String>> sheets(Path pdf) throws Exception {
        List<List<String>> sheets = new ArrayList<>();
        int pages;
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            pages = document.getNumberOfPages();
        }
        for (int k = 1; k <= pages; k++) {
            sheets.add(MARK.matcher(text(pdf, k))
                    .results()
                    .map(found -> found.group(1))
                    .toList());
        }
        return sheets;
    }

    private static String text(Path pdf, int sheet) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(sheet);
            stripper.setEndPage(sheet);
            return stripper.getText(document);
        }
    }
}

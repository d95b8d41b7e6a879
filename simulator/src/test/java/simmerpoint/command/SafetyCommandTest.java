package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class SafetyCommandTest extends CommandRuns {
    /** The sheet is one page, has both units, and says what every such sheet must say. */
    @Test
    void theSheetIsOnePageInPlainWords() throws IOException {
        String text = sheet("metric");
        for (String must : new String[] {
            "Never look", "Cover the mirror", "Children", "fire ban", "not a clearance", "Local codes", " cm (", " in)"
        }) {
            assertTrue(text.contains(must), must + " in " + text);
        }
    }

    private String sheet(String units) throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        String[] words = {
            "safety", "../scenarios/tea-kitchen.yaml", "--rays", "4k", "--units", units, "--pdf", pdf.toString()
        };
        assertEquals(0, run(words));
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            assertEquals(1, read.getNumberOfPages());
            return new PDFTextStripper().getText(read).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    private static String group(String pattern, String text) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertTrue(found.find(), pattern + " in " + text);
        return found.group(1);
    }

    /** Whoever reads both meets one distance; the cook's is no larger. */
    @Test
    void theSheetKeepsPeopleAsFarAwayAsTheAnswer() throws IOException {
        String sheet = sheet("metric");
        String people = group("Everybody but the cook: (\\d+) cm", sheet);
        assertEquals(people, group("Keep people (\\d+).cm", out()));
        assertTrue(Integer.parseInt(group("The cook: (\\d+) cm", sheet)) <= Integer.parseInt(people), sheet);
        assertTrue(out().contains("850"), out());
    }

    /** Of one distance in both units the inches come first, and are no less than the centimetres. */
    @Test
    void inchesComeFirstWhereTheyAreAskedFor() throws IOException {
        String metric = group("Everybody but the cook: ([^.]*\\))", sheet("metric"));
        String inch = group("Everybody but the cook: ([^.]*\\))", sheet("inch"));
        assertEquals(metric.replaceAll("(.*) \\((.*)\\)", "$2 ($1)"), inch);
        double centimetres = Double.parseDouble(group("^(\\d+)", metric));
        double inches = Double.parseDouble(group("^(\\d+)", inch));
        assertTrue(inches * 2.54 >= centimetres && inches * 2.54 < centimetres + 2.54, inch);
        assertTrue(sheet("inch").contains("3 ft") && !sheet("inch").contains("1 m "), inch);
    }
}

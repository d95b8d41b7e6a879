package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class SafetyCommandTest extends CommandRuns {
    /** The sheet is one page, has both units, and says what every such sheet must say. */
    @Test
    void theSheetIsOnePageInPlainWords() throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        assertEquals(0, run("safety", "../scenarios/tea-kitchen.yaml", "--rays", "4k", "--pdf", pdf.toString()));
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            assertEquals(1, read.getNumberOfPages());
            String text = new PDFTextStripper().getText(read).replaceAll("[\\s\u00a0]+", " ");
            for (String must : new String[] {
                "Never look",
                "Cover the mirror",
                "Children",
                "fire ban",
                "not a clearance",
                "Local codes",
                " cm (",
                " in)"
            }) {
                assertTrue(text.contains(must), must + " in " + text);
            }
        }
    }
}

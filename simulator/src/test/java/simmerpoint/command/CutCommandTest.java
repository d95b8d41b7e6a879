package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class CutCommandTest extends CommandRuns {
    /** However short the answer, the printed check says how exact is exact enough. */
    @Test
    void thePrintedCheckHasTolerances() throws IOException {
        Path pdf = folder.resolve("patterns.pdf");
        assertEquals(0, run("cut", "../scenarios/tea-kitchen.yaml", "--rays", "2k", "--pdf", pdf.toString()));
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(read);
            assertTrue(text.contains("\u00b1"), text);
        }
    }
}

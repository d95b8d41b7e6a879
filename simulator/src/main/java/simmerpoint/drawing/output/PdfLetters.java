package simmerpoint.drawing.output;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import simmerpoint.drawing.TextMetrics;

/**
 * The letters of a PDF file: Liberation Sans (SIL Open Font License 1.1), which PDFBox brings along, embedded as far as it is used. What
 * it has no letter for becomes a question mark.
 */
final class PdfLetters implements TextMetrics {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final double PER_EM = 1000;

    private final PDFont font;
    private final Map<Integer, Boolean> known = new HashMap<>();

    PdfLetters(PDDocument document) throws IOException {
        try (InputStream stream = PDDocument.class.getResourceAsStream(FILE)) {
            if (stream == null) {
                throw new IllegalStateException(FILE + " is missing from the program");
            }
            font = PDType0Font.load(document, stream, true);
        }
    }

    PDFont font() {
        return font;
    }

    /** The words with nothing in them that the font has no letter for. */
    String writable(String words) {
        StringBuilder out = new StringBuilder();
        words.codePoints().forEach(c -> out.appendCodePoint(known.computeIfAbsent(c, this::isKnown) ? c : '?'));
        return out.toString();
    }

    private boolean isKnown(int letter) {
        try {
            return font.encode(Character.toString(letter)).length > 0;
        } catch (IllegalArgumentException e) {
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public double width(String words, double size, boolean bold) {
        try {
            return font.getStringWidth(writable(words)) / PER_EM * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

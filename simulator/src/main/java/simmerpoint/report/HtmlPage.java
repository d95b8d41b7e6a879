package simmerpoint.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.function.Consumer;
import simmerpoint.drawing.output.SvgStyles;
import simmerpoint.drawing.output.XmlText;
import simmerpoint.drawing.output.XmlWriter;
import simmerpoint.quantities.Version;

/**
 * The frame of a page that stands alone: it asks for nothing from anywhere, runs no script, and says so in a rule that
 * browsers hold it to.
 */
final class HtmlPage {
    /** What every page of ours says near its top. */
    static final String MARK = "name=\"generator\" content=\"Simmerpoint";

    private static final int LONGEST_TITLE = 100;

    private HtmlPage() {}

    /** The bytes of a page with the given title and body, in UTF-8. */
    static byte[] bytes(String title, Consumer<XmlWriter> body) {
        String sheet = sheet();
        XmlWriter pen = new XmlWriter();
        pen.open("html", "lang", "en").line().open("head").line();
        pen.empty("meta", "charset", "utf-8").line();
        pen.empty("meta", "http-equiv", "Content-Security-Policy", "content", rule(sheet))
                .line();
        pen.empty("meta", "name", "generator", "content", "Simmerpoint " + Version.text())
                .line();
        pen.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        pen.empty("meta", "name", "color-scheme", "content", "light dark").line();
        pen.leaf("title", XmlText.cut(title, LONGEST_TITLE))
                .line()
                .style(sheet)
                .line()
                .close("head")
                .line();
        pen.open("body").line();
        body.accept(pen);
        pen.close("body").line().close("html").line();
        return ("<!DOCTYPE html>\n" + pen.written()).getBytes(StandardCharsets.UTF_8);
    }

    /** Nothing from outside, no script, no form; pictures only from within, and this one style sheet. */
    private static String rule(String sheet) {
        return "default-src 'none'; img-src data:; style-src 'sha256-" + hash(sheet)
                + "'; base-uri 'none'; form-action 'none'";
    }

    private static String hash(String sheet) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(sheet.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java knows SHA-256", e);
        }
    }

    /** Colours and drawings as the drawing layer declares them, then the page's own. */
    static String sheet() {
        return SvgStyles.sheet() + pageSheet();
    }

    private static String pageSheet() {
        try (InputStream stream = HtmlPage.class.getResourceAsStream("page.css")) {
            if (stream == null) {
                throw new IllegalStateException("page.css is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The list of chapters, to jump to. */
    static void contents(List<HtmlChapter> chapters, XmlWriter pen) {
        pen.open("nav", "aria-label", "Chapters").open("ol").line();
        for (HtmlChapter chapter : chapters) {
            pen.open("li")
                    .leaf("a", chapter.heading(), "href", "#" + chapter.id())
                    .close("li")
                    .line();
        }
        pen.close("ol").close("nav").line();
    }
}

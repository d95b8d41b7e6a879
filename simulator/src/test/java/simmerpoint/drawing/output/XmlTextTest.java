package simmerpoint.drawing.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class XmlTextTest {
    @Test
    void whatMeansSomethingInHtmlIsWrittenAsText() {
        assertEquals(
                "&lt;script&gt;alert(&quot;a&quot; &amp; &#39;b&#39;)&lt;/script&gt;",
                XmlText.escaped("<script>alert(\"a\" & 'b')</script>"));
        assertEquals("\u05e9\u05dc\u05d5\u05dd \ud83c\udf72", XmlText.escaped("\u05e9\u05dc\u05d5\u05dd \ud83c\udf72"));
    }

    /** Neither in XML 1.0 (section 2.2) nor, but for tab and line feed, in HTML ("noncharacter" and "control", Infra). */
    @Test
    void whatMayNotStandInAPageIsReplaced() {
        assertEquals("a\ufffdb\ufffd\ufffdc\n\td", XmlText.escaped("a\u0000b\ud800\u001bc\n\td"));
        assertEquals("\ufffd\ufffd\ufffd", XmlText.escaped("\uffff\ufdd0\u0085"));
    }

    /** The explicit directional formatting characters of the Unicode Bidirectional Algorithm (UAX 9, section 2). */
    @Test
    void whatTurnsTextIsShownAndNotObeyed() {
        assertEquals("a[U+202E]b[U+2066]c", XmlText.escaped("a\u202eb\u2066c"));
    }

    @Test
    void aLongTextIsCutBetweenLetters() {
        assertEquals("\ud83c\udf72\ud83c\udf72\u2026", XmlText.cut("\ud83c\udf72".repeat(10), 3));
        assertEquals("abc", XmlText.cut("abc", 3));
    }

    /** Any text comes back from a parser as it went in, but for what may not stand in a page. */
    @Property(tries = 300, seed = "42")
    void anyTextIsReadBackAsText(@ForAll String text) throws Exception {
        String page = new XmlWriter().leaf("p", text, "title", text).written();
        Element read = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        assertEquals(0, read.getElementsByTagName("*").getLength());
        String kept = read.getTextContent();
        String turning = "[\u202a-\u202e\u2066-\u2069\u200e\u200f\u061c]";
        String shown = text.replaceAll(turning, "[U+0000]");
        assertEquals(shown.codePointCount(0, shown.length()), kept.codePointCount(0, kept.length()));
        assertEquals(kept.replaceAll("[\n\t]", " "), read.getAttribute("title"));
    }

    @Test
    void elementsAreClosedInOrder() {
        XmlWriter pen = new XmlWriter().open("p").open("em");
        assertThrows(IllegalStateException.class, () -> pen.close("p"));
        assertThrows(
                IllegalStateException.class, () -> new XmlWriter().open("p").written());
        assertThrows(IllegalArgumentException.class, () -> new XmlWriter().style("</style>"));
    }
}

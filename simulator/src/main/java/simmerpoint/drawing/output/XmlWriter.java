package simmerpoint.drawing.output;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes elements of HTML and SVG, well formed in the sense of XML too: every element is closed, every text and attribute
 * escaped.
 */
public final class XmlWriter {
    private final StringBuilder out = new StringBuilder(1 << 16);
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; {@code attributes} are names and values in turn, an attribute whose value is null is left out. */
    public XmlWriter open(String tag, String... attributes) {
        out.append('<').append(tag);
        attributes(attributes);
        out.append('>');
        open.push(tag);
        return this;
    }

    /** Closes the element opened last, which must be a {@code tag}. */
    public XmlWriter close(String tag) {
        String last = open.isEmpty() ? "nothing" : open.pop();
        if (!last.equals(tag)) {
            throw new IllegalStateException("</" + tag + "> closes " + last);
        }
        out.append("</").append(tag).append(">");
        return this;
    }

    /** A line break in the page's source, where it means nothing. */
    public XmlWriter line() {
        out.append('\n');
        return this;
    }

    /** An element without content, of those that HTML knows as such, or of SVG. */
    public XmlWriter empty(String tag, String... attributes) {
        out.append('<').append(tag);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    /** Text in the open element. */
    public XmlWriter text(String text) {
        out.append(XmlText.escaped(text));
        return this;
    }

    /** An element that holds text only. */
    public XmlWriter leaf(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close(tag);
    }

    /** What another writer has written. */
    public XmlWriter put(XmlWriter other) {
        out.append(other.written());
        return this;
    }

    /** A style sheet of our own, as it is: without the signs that would end it or start an entity. */
    public XmlWriter style(String sheet) {
        if (sheet.contains("<") || sheet.contains("&")) {
            throw new IllegalArgumentException("a style sheet with < or &");
        }
        out.append("<style>").append(sheet).append("</style>");
        return this;
    }

    private void attributes(String... attributes) {
        for (int k = 0; k < attributes.length; k += 2) {
            if (attributes[k + 1] != null) {
                out.append(' ')
                        .append(attributes[k])
                        .append("=\"")
                        .append(XmlText.escaped(attributes[k + 1]))
                        .append('"');
            }
        }
    }

    /** Everything written; all elements must be closed. */
    public String written() {
        if (!open.isEmpty()) {
            throw new IllegalStateException(open.peek() + " is not closed");
        }
        return out.toString();
    }
}

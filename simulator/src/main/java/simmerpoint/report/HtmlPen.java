package simmerpoint.report;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes elements of HTML and SVG, well formed in the sense of XML too: every element is closed, every text and attribute
 * escaped.
 */
final class HtmlPen {
    private final StringBuilder out = new StringBuilder(1 << 16);
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element; {@code attributes} are names and values in turn, an attribute whose value is null is left out. */
    HtmlPen open(String tag, String... attributes) {
        out.append('<').append(tag);
        attributes(attributes);
        out.append('>');
        open.push(tag);
        return this;
    }

    /** Closes the element opened last, which must be a {@code tag}. */
    HtmlPen close(String tag) {
        String last = open.isEmpty() ? "nothing" : open.pop();
        if (!last.equals(tag)) {
            throw new IllegalStateException("</" + tag + "> closes " + last);
        }
        out.append("</").append(tag).append(">");
        return this;
    }

    /** A line break in the page's source, where it means nothing. */
    HtmlPen line() {
        out.append('\n');
        return this;
    }

    /** An element without content, of those that HTML knows as such, or of SVG. */
    HtmlPen empty(String tag, String... attributes) {
        out.append('<').append(tag);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    /** Text in the open element. */
    HtmlPen text(String text) {
        out.append(HtmlText.escaped(text));
        return this;
    }

    /** An element that holds text only. */
    HtmlPen leaf(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close(tag);
    }

    /** What another pen has written. */
    HtmlPen put(HtmlPen other) {
        out.append(other.written());
        return this;
    }

    /** A style sheet of our own, as it is: without the signs that would end it or start an entity. */
    HtmlPen style(String sheet) {
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
                        .append(HtmlText.escaped(attributes[k + 1]))
                        .append('"');
            }
        }
    }

    /** Everything written; all elements must be closed. */
    String written() {
        if (!open.isEmpty()) {
            throw new IllegalStateException(open.peek() + " is not closed");
        }
        return out.toString();
    }
}

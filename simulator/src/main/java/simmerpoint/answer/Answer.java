package simmerpoint.answer;

import java.util.List;
import java.util.stream.Stream;

/**
 * An answer in words: the same for terminal, window and page.
 *
 * @param title one line, fit to be shown: no control characters; may be empty
 * @param sections in the order in which they are read
 */
public record Answer(String title, List<Section> sections) {
    /** Keeps a copy of the list. */
    public Answer {
        sections = List.copyOf(sections);
    }

    /** The same with one more section at its end. */
    public Answer with(Section last) {
        return new Answer(
                title, Stream.concat(sections.stream(), Stream.of(last)).toList());
    }
}

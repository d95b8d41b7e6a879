package simmerpoint.answer;

import java.util.List;

/**
 * A heading and what stands under it.
 *
 * @param heading a few words
 * @param items in order
 */
public record Section(String heading, List<Item> items) {
    /** Keeps a copy of the list. */
    public Section {
        items = List.copyOf(items);
    }

    /** Collects what stands under {@code heading}. */
    public static SectionBuilder headed(String heading) {
        return new SectionBuilder(heading);
    }
}

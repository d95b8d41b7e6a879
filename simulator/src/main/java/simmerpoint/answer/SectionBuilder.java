package simmerpoint.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Collects what stands under a heading, in order. */
public final class SectionBuilder {
    private final String heading;
    private final List<Item> items = new ArrayList<>();

    SectionBuilder(String heading) {
        this.heading = heading;
    }

    /** Adds a paragraph of one or more sentences. */
    public SectionBuilder say(String text) {
        return add(new Item.Sentence(text));
    }

    /** Adds a paragraph if there is one. */
    public SectionBuilder say(Optional<String> text) {
        text.ifPresent(this::say);
        return this;
    }

    /** Adds a paragraph each. */
    public SectionBuilder say(List<String> texts) {
        texts.forEach(this::say);
        return this;
    }

    /** Adds a paragraph if {@code wanted}. */
    public SectionBuilder sayIf(boolean wanted, String text) {
        return wanted ? say(text) : this;
    }

    /** Adds a warning. */
    public SectionBuilder caution(String text) {
        return add(new Item.Caution(text));
    }

    /** Adds a warning if there is one. */
    public SectionBuilder caution(Optional<String> text) {
        text.ifPresent(this::caution);
        return this;
    }

    /** Adds a figure with its name. */
    public SectionBuilder figure(String label, String value) {
        return add(new Item.Figure(label, value));
    }

    /** Adds a figure if there is one. */
    public SectionBuilder figure(String label, Optional<String> value) {
        value.ifPresent(text -> figure(label, text));
        return this;
    }

    /** Adds anything. */
    public SectionBuilder add(Item item) {
        items.add(item);
        return this;
    }

    /** Adds all of these. */
    public SectionBuilder addAll(List<? extends Item> more) {
        items.addAll(more);
        return this;
    }

    /** What was added, under the heading. */
    public Section build() {
        return new Section(heading, items);
    }
}

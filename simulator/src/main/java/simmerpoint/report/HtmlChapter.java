package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.drawing.output.XmlWriter;

/**
 * One chapter of the page: an answer's sections with pictures between them. What it says of errors is kept
 * apart, and so are its cautions, since the page gathers them at its end; those of its own subject stand in it too.
 */
public final class HtmlChapter {
    private final String id;
    private final String heading;
    private final List<Section> sections = new ArrayList<>();
    private final List<Item> cautions = new ArrayList<>();
    private final List<Item> errors = new ArrayList<>();
    private final List<Consumer<XmlWriter>> parts = new ArrayList<>();

    private HtmlChapter(String id, String heading) {
        this.id = id;
        this.heading = heading;
    }

    /**
     * A chapter of {@code answer}'s sections.
     *
     * @param id a word of our own to link to
     * @param heading of the chapter
     * @param answer what it says
     */
    public static HtmlChapter of(String id, String heading, Answer answer) {
        return of(id, heading, answer.sections());
    }

    static HtmlChapter of(String id, String heading, List<Section> sections) {
        HtmlChapter chapter = new HtmlChapter(id, heading);
        for (Section section : sections) {
            if (section.heading().equals(Cautions.HEADING)) {
                chapter.cautions.addAll(section.items());
            } else if (section.heading().equals(Cautions.HOW_SURE)) {
                chapter.errors.addAll(section.items());
            } else {
                chapter.sections.add(section);
                chapter.parts.add(pen -> chapter.heading(section, pen).items(section.items()));
            }
        }
        return chapter;
    }

    /** The same with a picture behind its first {@code sections} sections; pictures are added from last to first. */
    public HtmlChapter with(int sections, HtmlFigure figure) {
        return with(sections, figure::write);
    }

    HtmlChapter with(int sections, Consumer<XmlWriter> part) {
        HtmlChapter copy = copy();
        copy.parts.add(Math.min(sections, parts.size()), part);
        return copy;
    }

    /** The same with a picture inside one section (counted from 0), behind its first {@code items} items. */
    public HtmlChapter inside(int section, int items, HtmlFigure figure) {
        HtmlChapter copy = copy();
        Section own = sections.get(section);
        copy.parts.set(section, pen -> {
            HtmlAnswer answer = copy.heading(own, pen);
            answer.items(own.items().subList(0, items));
            figure.write(pen);
            answer.items(own.items().subList(items, own.items().size()));
        });
        return copy;
    }

    private HtmlChapter copy() {
        HtmlChapter copy = new HtmlChapter(id, heading);
        copy.sections.addAll(sections);
        copy.cautions.addAll(cautions);
        copy.errors.addAll(errors);
        copy.parts.addAll(parts);
        return copy;
    }

    String id() {
        return id;
    }

    String heading() {
        return heading;
    }

    List<Item> cautions() {
        return cautions;
    }

    List<Item> errors() {
        return errors;
    }

    void write(XmlWriter pen) {
        pen.open("section", "id", id, "aria-labelledby", id + "-heading").line();
        pen.leaf("h2", heading, "id", id + "-heading").line();
        parts.forEach(part -> part.accept(pen));
        new HtmlAnswer(pen, heading)
                .items(cautions.stream().filter(item -> !isGeneral(item)).toList());
        pen.close("section").line();
    }

    private HtmlAnswer heading(Section section, XmlWriter pen) {
        if (!section.heading().equals(heading)) {
            pen.leaf("h3", section.heading()).line();
        }
        return new HtmlAnswer(pen, section.heading());
    }

    /** Whether {@code item} is a caution that the page says once for all chapters. */
    static boolean isGeneral(Item item) {
        return item instanceof Item.Caution caution && caution.general();
    }
}

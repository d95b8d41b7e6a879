package simmerpoint.report;

import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;

/** An answer whose texts are plain ASCII but for their no-break spaces. */
final class AsciiAnswer {
    private AsciiAnswer() {}

    static Answer of(Answer answer) {
        return new Answer(
                plain(answer.title()),
                answer.sections().stream().map(AsciiAnswer::section).toList());
    }

    private static Section section(Section section) {
        return new Section(
                plain(section.heading()),
                section.items().stream().map(AsciiAnswer::item).toList());
    }

    private static Item item(Item item) {
        if (item instanceof Item.Sentence sentence) {
            return new Item.Sentence(plain(sentence.text()));
        }
        if (item instanceof Item.Caution caution) {
            return new Item.Caution(plain(caution.text()), caution.general());
        }
        if (item instanceof Item.Figure figure) {
            return new Item.Figure(plain(figure.label()), plain(figure.value()));
        }
        if (item instanceof Item.Table table) {
            return new Item.Table(
                    plain(table.heads()),
                    table.rows().stream().map(AsciiAnswer::plain).toList());
        }
        Item.Bar bar = (Item.Bar) item;
        return new Item.Bar(bar.depth(), plain(bar.label()), plain(bar.figure()), bar.share(), plain(bar.shareText()));
    }

    private static List<String> plain(List<String> texts) {
        return texts.stream().map(AsciiAnswer::plain).toList();
    }

    /** Keeps the no-break spaces, which the layout still needs. */
    private static String plain(String text) {
        StringBuilder out = new StringBuilder();
        for (String part : text.split(FigureFormat.NBSP, -1)) {
            out.append(out.isEmpty() && !text.startsWith(FigureFormat.NBSP) ? "" : FigureFormat.NBSP)
                    .append(Ascii.of(part));
        }
        return out.toString();
    }
}

package simmerpoint.report;

import java.util.List;
import java.util.Locale;
import simmerpoint.answer.Item;
import simmerpoint.drawing.output.XmlWriter;

/** The items of an answer as paragraphs, lists of figures, ledgers and tables: the words are those of the terminal. */
final class HtmlAnswer {
    private static final int FULL = 100;

    private final XmlWriter pen;
    private final String name;

    /** Writes with {@code pen}; {@code name} tells tables apart for whoever hears them. */
    HtmlAnswer(XmlWriter pen, String name) {
        this.pen = pen;
        this.name = name;
    }

    /** Items in order; neighbouring figures become one list, neighbouring bars one table. */
    void items(List<Item> items) {
        int k = 0;
        while (k < items.size()) {
            int end = k + 1;
            Class<? extends Item> kind = items.get(k).getClass();
            while (end < items.size() && items.get(end).getClass() == kind) {
                end++;
            }
            run(items.subList(k, end));
            k = end;
        }
    }

    private void run(List<Item> same) {
        Item first = same.get(0);
        if (first instanceof Item.Figure) {
            figures(same);
        } else if (first instanceof Item.Bar) {
            ledger(same);
        } else {
            same.forEach(this::item);
        }
    }

    private void item(Item item) {
        if (item instanceof Item.Sentence sentence) {
            pen.leaf("p", sentence.text()).line();
        } else if (item instanceof Item.Caution caution) {
            caution(caution.text());
        } else if (item instanceof Item.Table table) {
            table(table);
        }
    }

    /** A caution says that it is one in words, not by its colour alone. */
    private void caution(String text) {
        pen.open("p", "class", "caution")
                .leaf("strong", "Caution: ")
                .text(text)
                .close("p")
                .line();
    }

    private void figures(List<Item> items) {
        pen.open("dl");
        for (Item item : items) {
            Item.Figure figure = (Item.Figure) item;
            pen.open("div")
                    .leaf("dt", figure.label())
                    .leaf("dd", figure.value())
                    .close("div");
        }
        pen.close("dl").line();
    }

    private void ledger(List<Item> items) {
        pen.open("table", "class", "ledger").leaf("caption", name);
        pen.open("thead").open("tr");
        pen.leaf("th", "light", "scope", "col")
                .leaf("th", "watts", "scope", "col")
                .leaf("th", "share", "scope", "col");
        pen.close("tr").close("thead").line().open("tbody").line();
        for (Item item : items) {
            Item.Bar bar = (Item.Bar) item;
            pen.open("tr", "class", "depth" + bar.depth())
                    .open("th", "scope", "row")
                    .text(bar.label());
            bar(bar.share());
            pen.close("th")
                    .leaf("td", bar.figure())
                    .leaf("td", bar.shareText())
                    .close("tr")
                    .line();
        }
        pen.close("tbody").close("table").line();
    }

    /** Drawn, not coloured as a background, so that it is printed too. */
    private void bar(double share) {
        double length = FULL * Math.max(0, Math.min(1, share));
        pen.open("svg", "class", "bar", "viewBox", "0 0 100 4", "preserveAspectRatio", "none", "aria-hidden", "true")
                .empty("rect", "class", "track", "width", "100", "height", "4")
                .empty("rect", "width", String.format(Locale.ROOT, "%.2f", length), "height", "4")
                .close("svg");
    }

    private void table(Item.Table table) {
        pen.open("div", "class", "wide", "role", "region", "aria-label", name + ", table", "tabindex", "0");
        pen.open("table", "class", "rows").leaf("caption", name).open("thead").open("tr");
        table.heads().forEach(head -> pen.leaf("th", head.replace('\n', ' '), "scope", "col"));
        pen.close("tr").close("thead").line().open("tbody").line();
        for (List<String> row : table.rows()) {
            pen.open("tr").leaf("th", row.get(0), "scope", "row");
            row.subList(1, row.size()).forEach(cell -> pen.leaf("td", cell));
            pen.close("tr").line();
        }
        pen.close("tbody").close("table").close("div").line();
    }
}

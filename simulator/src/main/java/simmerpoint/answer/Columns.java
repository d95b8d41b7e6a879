package simmerpoint.answer;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The columns of a table, declared once: what each holds and how it is read off what a row stands for. Each method gives these
 * columns and one more.
 *
 * @param <R> what a row stands for
 * @param all in order; the first names the row
 */
public record Columns<R>(List<Column<R>> all) {
    /**
     * One column.
     *
     * @param <R> what a row holds
     * @param head what it holds, with its unit; lines are parted by line breaks
     * @param cell reads it off a row
     */
    public record Column<R>(String head, Function<R, String> cell) {}

    /** Keeps a copy of the list. */
    public Columns {
        all = List.copyOf(all);
    }

    /** None yet. */
    public static <R> Columns<R> none() {
        return new Columns<>(List.of());
    }

    /** One more. */
    public Columns<R> with(String head, Function<R, String> cell) {
        return with(List.of(new Column<>(head, cell)));
    }

    private Columns<R> with(List<Column<R>> more) {
        return new Columns<>(Stream.concat(all.stream(), more.stream()).toList());
    }

    /** One more, before the others. */
    public Columns<R> named(String head, Function<R, String> cell) {
        return Columns.<R>none().with(head, cell).with(all);
    }

    /** One more if {@code wanted}. */
    public Columns<R> withIf(boolean wanted, String head, Function<R, String> cell) {
        return wanted ? with(head, cell) : this;
    }

    /** The table of these rows. */
    public Item.Table table(List<? extends R> rows) {
        return new Item.Table(
                all.stream().map(Column::head).toList(),
                rows.stream()
                        .map(row -> all.stream()
                                .map(column -> column.cell().apply(row))
                                .toList())
                        .toList());
    }
}

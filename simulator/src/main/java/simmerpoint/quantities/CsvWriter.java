package simmerpoint.quantities;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import simmerpoint.quantities.Field.Quantity;
import simmerpoint.sampling.Estimate;

/**
 * Writes a table for a spreadsheet or a script. Lines that start with # say what it is and what the columns are; the
 * columns have the keys of the JSON. Figures have a decimal point; an empty cell is a figure that does not exist. A text
 * that holds a comma stands in double quotes; one that looks like a formula has an apostrophe before it.
 */
final class CsvWriter {
    static final int DIGITS = 6;

    private final Appendable out;

    /** Onto {@code out}, whose failures are thrown as {@link UncheckedIOException}. */
    CsvWriter(Appendable out) {
        this.out = out;
    }

    /** One column as it is written. */
    private record Column<S>(String head, Function<S, String> cell) {}

    static <R, S> String text(Document<R> document, Table<R, S> table, R result) {
        StringBuilder text = new StringBuilder(1 << 14);
        CsvWriter csv = new CsvWriter(text);
        csv.head(document.command(), document.title().apply(result));
        if (document.seed() != null) {
            csv.comment("seed: " + document.seed().applyAsLong(result));
        }
        table.notes().apply(result).forEach(csv::comment);
        csv.table(table.fields(), () -> table.rows().apply(result));
        return text.toString();
    }

    /** What it is. */
    void head(String command, String title) {
        comment("Simmerpoint " + Version.text() + " " + command);
        comment("title: " + OneLine.of(title));
    }

    void comment(String text) {
        put("# " + text.replace(",", ";") + "\n");
    }

    /** What the columns are, and a line for each row as it comes. */
    <S> void table(Fields<S> fields, Supplier<Stream<S>> rows) {
        fields.columns().forEach(this::explain);
        List<Column<S>> columns =
                fields.columns().stream().flatMap(q -> columns(q, rows)).toList();
        line(columns.stream().map(Column::head));
        rows.get()
                .forEach(
                        row -> line(columns.stream().map(column -> column.cell().apply(row))));
    }

    private void explain(Quantity<?> quantity) {
        boolean unsure = quantity.type() == Field.Type.ESTIMATE;
        comment(quantity.key() + ": " + quantity.label()
                + (unsure ? "; " + quantity.key() + "_se: its standard error" : ""));
    }

    private void line(Stream<String> cells) {
        put(cells.map(CsvWriter::quoted).collect(Collectors.joining(",", "", "\n")));
    }

    private void put(String text) {
        try {
            out.append(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String quoted(String text) {
        return text.contains(",") || text.contains("\"") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }

    private static <S> Stream<Column<S>> columns(Quantity<S> quantity, Supplier<Stream<S>> rows) {
        Function<S, ?> value = quantity.value();
        return switch (quantity.type()) {
            case ESTIMATE ->
                Stream.of(
                        new Column<>(quantity.key(), row -> cell(figure(value.apply(row)))),
                        new Column<>(quantity.key() + "_se", row -> cell(error(value.apply(row)))));
            case TEXTS ->
                rows.get()
                        .map(row -> ((Map<?, ?>) value.apply(row)).keySet())
                        .flatMap(Collection::stream)
                        .distinct()
                        .map(key -> new Column<>((String) key, row -> cell(((Map<?, ?>) value.apply(row)).get(key))));
            default -> Stream.of(new Column<>(quantity.key(), row -> cell(value.apply(row))));
        };
    }

    private static Double figure(Object estimate) {
        return estimate == null ? null : (Double) ((Estimate) estimate).value();
    }

    private static Double error(Object estimate) {
        return estimate == null || !Double.isFinite(figure(estimate))
                ? null
                : (Double) ((Estimate) estimate).standardError();
    }

    private static String cell(Object value) {
        return value instanceof Double x ? StableNumber.of(x, DIGITS) : value == null ? "" : harmless(value.toString());
    }

    /** A spreadsheet would take a text that begins so for a formula; with an apostrophe before it, it stays a text. */
    private static String harmless(String text) {
        return text.matches("[=+@\\-].*") && !text.matches("[+-]?[0-9.]+([eE][+-]?[0-9]+)?") ? "'" + text : text;
    }
}

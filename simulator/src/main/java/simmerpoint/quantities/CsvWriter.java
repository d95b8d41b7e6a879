package simmerpoint.quantities;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
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
    private static final int DIGITS = 6;

    private final StringBuilder out = new StringBuilder(1 << 14);

    private CsvWriter() {}

    /** One column as it is written. */
    private record Column<S>(String head, Function<S, String> cell) {}

    static <R, S> String text(Document<R> document, Table<R, S> table, R result) {
        List<S> rows = table.rows().apply(result).toList();
        CsvWriter csv = new CsvWriter();
        csv.comment("Simmerpoint " + Version.text() + " " + document.command());
        csv.comment("title: " + OneLine.of(document.title().apply(result)));
        if (document.seed() != null) {
            csv.comment("seed: " + document.seed().applyAsLong(result));
        }
        table.notes().apply(result).forEach(csv::comment);
        table.fields().columns().forEach(csv::explain);
        csv.table(
                table.fields().columns().stream().flatMap(q -> columns(q, rows)).toList(), rows);
        return csv.out.toString();
    }

    private void explain(Quantity<?> quantity) {
        boolean unsure = quantity.type() == Field.Type.ESTIMATE;
        comment(quantity.key() + ": " + quantity.label()
                + (unsure ? "; " + quantity.key() + "_se: its standard error" : ""));
    }

    private void comment(String text) {
        out.append("# ").append(text.replace(",", ";")).append('\n');
    }

    private <S> void table(List<Column<S>> columns, List<S> rows) {
        line(columns.stream().map(Column::head));
        rows.forEach(row -> line(columns.stream().map(column -> column.cell().apply(row))));
    }

    private void line(Stream<String> cells) {
        out.append(cells.map(CsvWriter::quoted).collect(Collectors.joining(",")))
                .append('\n');
    }

    private static String quoted(String text) {
        return text.contains(",") || text.contains("\"") ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }

    private static <S> Stream<Column<S>> columns(Quantity<S> quantity, List<S> rows) {
        Function<S, ?> value = quantity.value();
        return switch (quantity.type()) {
            case ESTIMATE ->
                Stream.of(
                        new Column<>(quantity.key(), row -> cell(figure(value.apply(row)))),
                        new Column<>(quantity.key() + "_se", row -> cell(error(value.apply(row)))));
            case TEXTS ->
                rows.stream()
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

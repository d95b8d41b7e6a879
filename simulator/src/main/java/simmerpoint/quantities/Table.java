package simmerpoint.quantities;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A table behind an answer: one row for each of many things with the same fields.
 *
 * @param <R> type of the result
 * @param <S> type of what stands in a row
 * @param fields of each row
 * @param rows reads them off a result
 * @param notes on the whole table of a result, a line each
 */
public record Table<R, S>(Fields<S> fields, Function<R, Stream<S>> rows, Function<R, List<String>> notes) {
    /** A table that needs no notes. */
    public Table(Fields<S> fields, Function<R, Stream<S>> rows) {
        this(fields, rows, result -> List.of());
    }
}

package simmerpoint.quantities;

import java.util.function.Function;

/**
 * Something declared about results of one type.
 *
 * @param <R> type of the result
 */
public sealed interface Field<R> permits Quantity, Group, Rows {
    /** Names it in files; ends with the unit if there is one. */
    String key();

    /** What it is, in a few words. */
    String label();

    /** Whether it can be missing: it is null then. */
    boolean nullable();

    /** The same field of something that holds an {@code R}; without a value where {@code part} is null. */
    <Q> Field<Q> from(Function<Q, R> part, boolean partNullable);

    /** {@code last} after {@code first}, which may give null. */
    static <Q, R, T> Function<Q, T> chain(Function<Q, R> first, Function<R, T> last) {
        return q -> {
            R r = first.apply(q);
            return r == null ? null : last.apply(r);
        };
    }
}

package simmerpoint.quantities;

import java.util.List;
import java.util.function.Function;

/**
 * A list of things with the same fields.
 *
 * @param key names it in files
 * @param label what it is
 * @param nullable whether it can be missing
 * @param value reads it off a result; null where there is none
 * @param fields of each row
 */
public record Rows<R, S>(String key, String label, boolean nullable, Function<R, List<S>> value, Fields<S> fields)
        implements Field<R> {
    @Override
    public <Q> Rows<Q, S> from(Function<Q, R> part, boolean partNullable) {
        return new Rows<>(key, label, nullable || partNullable, Field.chain(part, value), fields);
    }
}

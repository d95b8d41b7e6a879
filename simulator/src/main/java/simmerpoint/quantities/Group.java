package simmerpoint.quantities;

import java.util.function.Function;

/**
 * Fields under a common key.
 *
 * @param key names it in files
 * @param label what it is
 * @param nullable whether it can be missing
 * @param value reads it off a result; null where there is none
 * @param fields what it holds
 */
public record Group<R, S>(String key, String label, boolean nullable, Function<R, S> value, Fields<S> fields)
        implements Field<R> {
    @Override
    public <Q> Group<Q, S> from(Function<Q, R> part, boolean partNullable) {
        return new Group<>(key, label, nullable || partNullable, Field.chain(part, value), fields);
    }
}

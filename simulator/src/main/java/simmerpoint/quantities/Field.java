package simmerpoint.quantities;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Something declared about results of one type: what it is, and how it is read off a result.
 *
 * @param <R> type of the result
 */
public sealed interface Field<R> {
    /** Names it in files; ends with the unit if there is one. */
    String key();

    /** What it is, in a few words. */
    String label();

    /** Whether it can be missing: it is null then. */
    boolean nullable();

    /** The same field of something that holds an {@code R}; without a value where {@code part} gives null. */
    <Q> Field<Q> from(Function<Q, R> part, boolean partNullable);

    /**
     * A single value.
     *
     * @param <R> type of the result
     * @param key names it in files
     * @param label what it is
     * @param type how it is written
     * @param nullable whether it can be missing
     * @param words the only texts it can be; empty if it is no text or any
     * @param value reads it off a result, as {@link Type} says; null where there is none
     */
    record Quantity<R>(String key, String label, Type type, boolean nullable, List<String> words, Function<R, ?> value)
            implements Field<R> {
        /** Keeps a copy of the words. */
        public Quantity {
            words = List.copyOf(words);
        }

        /** Its unit; empty if it has none. */
        public Optional<SiUnit> unit() {
            return SiUnit.ofKey(key);
        }

        @Override
        public <Q> Quantity<Q> from(Function<Q, R> part, boolean partNullable) {
            return new Quantity<>(key, label, type, nullable || partNullable, words, chain(part, value));
        }
    }

    /**
     * Fields under a common key.
     *
     * @param <R> type of the result
     * @param <S> type of what the fields are of
     * @param key names it in files
     * @param label what it is
     * @param nullable whether it can be missing
     * @param value reads it off a result; null where there is none
     * @param fields what it holds
     */
    record Group<R, S>(String key, String label, boolean nullable, Function<R, S> value, Fields<S> fields)
            implements Field<R> {
        @Override
        public <Q> Group<Q, S> from(Function<Q, R> part, boolean partNullable) {
            return new Group<>(key, label, nullable || partNullable, chain(part, value), fields);
        }
    }

    /**
     * A list of things with the same fields.
     *
     * @param <R> type of the result
     * @param <S> type of what stands in a row
     * @param key names it in files
     * @param label what it is
     * @param nullable whether it can be missing
     * @param value reads it off a result; null where there is none
     * @param fields of each row
     */
    record Rows<R, S>(String key, String label, boolean nullable, Function<R, List<S>> value, Fields<S> fields)
            implements Field<R> {
        @Override
        public <Q> Rows<Q, S> from(Function<Q, R> part, boolean partNullable) {
            return new Rows<>(key, label, nullable || partNullable, chain(part, value), fields);
        }
    }

    /** What the value of a {@link Quantity} is. */
    enum Type {
        /** A {@link Double}; none if it is not finite. */
        NUMBER,
        /** An {@link simmerpoint.sampling.Estimate}: a figure with its standard error, {@code key_se}. */
        ESTIMATE,
        /** A {@code double[]}: the parts of a vector. */
        VECTOR,
        /** A {@link Long}. */
        WHOLE,
        /** A {@link Boolean}. */
        FLAG,
        /** A {@link String}. */
        TEXT,
        /** A {@link String} in ISO 8601, to the second and with its offset. */
        TIME,
        /** A {@link String} in ISO 8601. */
        DATE,
        /** A {@code Map<String, String>}: texts under keys that only the result knows. */
        TEXTS
    }

    /** {@code last} after {@code first}, which may give null. */
    static <Q, R, T> Function<Q, T> chain(Function<Q, R> first, Function<R, T> last) {
        return q -> {
            R r = first.apply(q);
            return r == null ? null : last.apply(r);
        };
    }
}

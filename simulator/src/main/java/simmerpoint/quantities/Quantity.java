package simmerpoint.quantities;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * A single value.
 *
 * @param key names it in files
 * @param label what it is
 * @param type how it is written
 * @param nullable whether it can be missing
 * @param words the only texts it can be; empty if it is no text or any
 * @param value reads it off a result, as {@link Type} says; null where there is none
 */
public record Quantity<R>(
        String key, String label, Type type, boolean nullable, List<String> words, Function<R, ?> value)
        implements Field<R> {
    /** What {@link Quantity#value} gives. */
    public enum Type {
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
        /** A {@link ZonedDateTime}, written in ISO 8601 to the second, with its offset. */
        TIME,
        /** A {@link LocalDate}. */
        DATE,
        /** A {@code Map<String, String>}: texts under keys that only the result knows. */
        TEXTS
    }

    private static final DateTimeFormatter ISO = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    /** Keeps a copy of the words. */
    public Quantity {
        words = List.copyOf(words);
    }

    /** Its unit; empty if it has none. */
    public Optional<SiUnit> unit() {
        return SiUnit.ofKey(key);
    }

    /** Times and dates as text, anything else as it is. */
    static Object written(Object value) {
        return value instanceof ZonedDateTime time
                ? ISO.format(time.truncatedTo(ChronoUnit.SECONDS))
                : value instanceof LocalDate date ? date.toString() : value;
    }

    @Override
    public <Q> Quantity<Q> from(Function<Q, R> part, boolean partNullable) {
        return new Quantity<>(key, label, type, nullable || partNullable, words, Field.chain(part, value));
    }
}

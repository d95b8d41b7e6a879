package simmerpoint.quantities;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import simmerpoint.quantities.Field.Group;
import simmerpoint.quantities.Field.Quantity;
import simmerpoint.quantities.Field.Rows;
import simmerpoint.sampling.Estimate;
import simmerpoint.uncertainty.LikelyRange;

/**
 * Declares what is told of results of one type, in order. Each method gives these fields and one more.
 *
 * @param <R> type of the result
 * @param all the fields
 */
public record Fields<R>(List<Field<R>> all) {
    private static final DateTimeFormatter ISO = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);

    /** Keeps a copy of the list; refuses two fields with one key. */
    public Fields {
        all = List.copyOf(all);
        if (all.stream().map(Field::key).distinct().count() < all.size()) {
            throw new IllegalArgumentException(
                    "two fields with one key: " + all.stream().map(Field::key).toList());
        }
    }

    /** None yet. */
    public static <R> Fields<R> none() {
        return new Fields<>(List.of());
    }

    /** A figure; null where it is not finite. */
    public Fields<R> number(String key, String label, ToDoubleFunction<R> value) {
        return value(key, label, Field.Type.NUMBER, true, value::applyAsDouble);
    }

    /** The same where there may be none. */
    public Fields<R> optionalNumber(String key, String label, Function<R, OptionalDouble> value) {
        return number(key, label, r -> value.apply(r).orElse(Double.NaN));
    }

    /** A figure with its standard error; none where {@code value} gives null. */
    public Fields<R> estimate(String key, String label, Function<R, Estimate> value) {
        return value(key, label, Field.Type.ESTIMATE, true, value);
    }

    /** The same where there may be none. */
    public Fields<R> optionalEstimate(String key, String label, Function<R, Optional<Estimate>> value) {
        return estimate(key, label, value.andThen(e -> e.orElse(null)));
    }

    /** Three figures: {@code boil_*_s} are {@code boil_low_s}, {@code boil_likely_s}, {@code boil_high_s}. */
    public Fields<R> range(String key, String label, Function<R, LikelyRange> value) {
        return number(key.replace("*", "low"), label + ": one pan in ten falls below", value, LikelyRange::low)
                .number(key.replace("*", "likely"), label + ": with the likely losses", value, LikelyRange::likely)
                .number(key.replace("*", "high"), label + ": one pan in ten falls above", value, LikelyRange::high);
    }

    private Fields<R> number(
            String key, String label, Function<R, LikelyRange> range, Function<LikelyRange, Double> end) {
        return value(key, label, Field.Type.NUMBER, true, Field.chain(range, end));
    }

    /** The parts of a vector. */
    public Fields<R> vector(String key, String label, Function<R, double[]> value) {
        return value(key, label, Field.Type.VECTOR, false, value);
    }

    /** A whole number. */
    public Fields<R> whole(String key, String label, ToLongFunction<R> value) {
        return value(key, label, Field.Type.WHOLE, false, value::applyAsLong);
    }

    /** True or false. */
    public Fields<R> flag(String key, String label, Predicate<R> value) {
        return value(key, label, Field.Type.FLAG, false, value::test);
    }

    /** A text, written on one line. */
    public Fields<R> text(String key, String label, Function<R, String> value) {
        return value(key, label, Field.Type.TEXT, false, value.andThen(OneLine::of));
    }

    /** One of a few texts. */
    public Fields<R> text(String key, String label, List<String> words, Function<R, String> value) {
        return with(new Quantity<>(key, label, Field.Type.TEXT, false, words, value));
    }

    /** One of the values of a type, in lower case and with spaces: "keep warm". */
    public <E extends Enum<E>> Fields<R> word(String key, String label, Class<E> type, Function<R, E> value) {
        List<String> words =
                Stream.of(type.getEnumConstants()).map(Fields::word).toList();
        return text(key, label, words, value.andThen(Fields::word));
    }

    /** "keep warm". */
    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Texts under keys that only the result knows. */
    public Fields<R> texts(String key, String label, Function<R, Map<String, String>> value) {
        return value(key, label, Field.Type.TEXTS, false, value);
    }

    /** A time; null where there is none. */
    public Fields<R> time(String key, String label, Function<R, Optional<ZonedDateTime>> value) {
        return value(
                key,
                label,
                Field.Type.TIME,
                true,
                r -> value.apply(r).map(ISO::format).orElse(null));
    }

    /** A date. */
    public Fields<R> date(String key, String label, Function<R, LocalDate> value) {
        return value(key, label, Field.Type.DATE, false, value.andThen(LocalDate::toString));
    }

    /** Fields under a common key. */
    public <S> Fields<R> group(String key, String label, Function<R, S> value, Fields<S> fields) {
        return with(new Group<>(key, label, false, value, fields));
    }

    /** Fields under a common key; null where there are none. */
    public <S> Fields<R> optionalGroup(String key, String label, Function<R, Optional<S>> value, Fields<S> fields) {
        return with(new Group<>(key, label, true, r -> value.apply(r).orElse(null), fields));
    }

    /** A list of things with the same fields. */
    public <S> Fields<R> rows(String key, String label, Function<R, List<S>> value, Fields<S> fields) {
        return with(new Rows<>(key, label, false, value, fields));
    }

    /** All fields of a part, beside the others. */
    public <S> Fields<R> include(Function<R, S> part, Fields<S> fields) {
        return with(fields.all.stream().map(field -> field.from(part, false)));
    }

    /** All fields of a part, beside the others; each is null where that part is missing. */
    public <S> Fields<R> includeOptional(Function<R, Optional<S>> part, Fields<S> fields) {
        Function<R, S> orNull = r -> part.apply(r).orElse(null);
        return with(fields.all.stream().map(field -> field.from(orNull, true)));
    }

    /** The single values, those in groups among them: what fits into one row of a table. */
    public List<Quantity<R>> columns() {
        return all.stream().flatMap(Fields::columns).toList();
    }

    private static <R> Stream<Quantity<R>> columns(Field<R> field) {
        if (field instanceof Group<R, ?> group) {
            return columns(group);
        }
        return field instanceof Quantity<R> quantity ? Stream.of(quantity) : Stream.of();
    }

    private static <R, S> Stream<Quantity<R>> columns(Group<R, S> group) {
        return group.fields().columns().stream().map(column -> column.from(group.value(), group.nullable()));
    }

    private Fields<R> value(String key, String label, Field.Type type, boolean nullable, Function<R, ?> value) {
        return with(new Quantity<>(key, label, type, nullable, List.of(), value));
    }

    private Fields<R> with(Field<R> field) {
        return with(Stream.of(field));
    }

    private Fields<R> with(Stream<? extends Field<R>> more) {
        List<Field<R>> longer = new ArrayList<>(all);
        more.forEach(longer::add);
        return new Fields<>(longer);
    }
}

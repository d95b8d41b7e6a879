package simmerpoint.study;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Results that several tests only look at: each is worked out once. */
public final class Once {
    private static final Map<List<Object>, Object> RESULTS = new ConcurrentHashMap<>();

    private Once() {}

    /** The result that belongs to {@code key}, which says all that it depends on. */
    @SuppressWarnings("unchecked")
    public static <T> T of(Supplier<T> work, Object... key) {
        return (T) RESULTS.computeIfAbsent(List.copyOf(Arrays.asList(key)), k -> work.get());
    }
}

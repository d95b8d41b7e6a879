package simmerpoint.frozen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/**
 * Numbers that a package gave before, so that its own tests notice whatever changes them. What they should be is held by
 * other tests, against sources outside the code. {@code -Dfrozen.renew=true} freezes those of today.
 */
public final class FrozenNumbers {
    private static final boolean RENEW = Boolean.getBoolean("frozen.renew");
    private static final Path FOLDER = Path.of("src/test/resources/simmerpoint/frozen/numbers");

    /** Other processors round sines and roots otherwise in the last digits, and sums gather it. */
    private static final double ROUNDING = 1e-8;

    private FrozenNumbers() {}

    /** Compares the numbers with those kept under that name. */
    public static void check(String name, NumberDigest digest) {
        Path file = FOLDER.resolve(name + ".txt");
        try {
            if (RENEW) {
                renew(file, digest.numbers());
            }
            compare(name, read(file), digest.numbers());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void compare(String name, Map<String, Double> before, Map<String, Double> now) {
        assertEquals(before.keySet(), now.keySet(), name);
        before.forEach((key, value) -> {
            if (!same(value, now.get(key))) {
                throw new AssertionError(name + ", " + key + " was " + value + " and is " + now.get(key));
            }
        });
    }

    private static boolean same(double before, double now) {
        return Double.compare(before, now) == 0
                || Math.abs(now - before) <= ROUNDING * (Math.abs(before) + Math.abs(now)) + ROUNDING * ROUNDING;
    }

    /** Numbers that are the same but for rounding stay as they are written. */
    private static void renew(Path file, Map<String, Double> now) throws IOException {
        Map<String, Double> before = Files.exists(file) ? read(file) : Map.of();
        StringBuilder text = new StringBuilder();
        now.forEach((key, value) -> {
            Double old = before.get(key);
            text.append(key)
                    .append(' ')
                    .append(old != null && same(old, value) ? old : value)
                    .append('\n');
        });
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static Map<String, Double> read(Path file) throws IOException {
        Map<String, Double> numbers = new TreeMap<>();
        for (String line : Files.readAllLines(file)) {
            String[] words = line.split(" ");
            numbers.put(words[0], Double.valueOf(words[1]));
        }
        return numbers;
    }
}

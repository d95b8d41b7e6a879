package simmerpoint.frozen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What every command prints and writes is what it printed and wrote before, for the cases of {@code cases.txt}. With
 * {@code -Dfrozen.renew=true} the results of today are frozen instead; whoever commits them says what moved and why.
 */
class FrozenResultsTest {
    private static final boolean RENEW = Boolean.getBoolean("frozen.renew");
    private static final Path FONTS = FrozenCase.RESULTS.resolve("fonts.txt");
    private static final Path DIFFERENT = Path.of("target/frozen");

    @TestFactory
    Stream<DynamicTest> everyCommand() throws IOException {
        if (RENEW) {
            Files.createDirectories(FrozenCase.RESULTS);
            Files.writeString(FONTS, FrozenPicture.fonts());
        }
        return FrozenCase.all().stream().map(each -> DynamicTest.dynamicTest(each.name(), () -> check(each)));
    }

    private static void check(FrozenCase each) throws IOException {
        Map<String, byte[]> outputs = outputs(each);
        boolean picturesCompare = RENEW || Files.readString(FONTS).equals(FrozenPicture.fonts());
        for (Map.Entry<String, byte[]> output : outputs.entrySet()) {
            boolean picture = output.getKey().equals("png");
            if (!picture || picturesCompare) {
                check(each.name() + "." + output.getKey(), output.getValue(), picture);
            }
        }
        assumeTrue(picturesCompare || !outputs.containsKey("png"), "this machine has other fonts: no picture compared");
    }

    /** A temporary folder of JUnit's would be longer, and break lines that name it elsewhere. */
    private static Map<String, byte[]> outputs(FrozenCase each) throws IOException {
        Path folder = Files.createTempDirectory("frozen");
        try {
            return each.run(folder);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static void check(String name, byte[] bytes, boolean picture) throws IOException {
        byte[] kept = picture ? FrozenPicture.reduced(bytes) : bytes;
        Path file = FrozenCase.RESULTS.resolve(name);
        if (RENEW && Files.notExists(file)) {
            Files.write(file, kept);
        }
        byte[] before = Files.readAllBytes(file);
        Optional<String> difference =
                picture ? FrozenPicture.difference(before, kept) : FrozenText.difference(text(before), text(kept));
        if (difference.isPresent() && RENEW) {
            Files.write(file, kept);
        } else if (difference.isPresent()) {
            Files.createDirectories(DIFFERENT);
            Files.write(DIFFERENT.resolve(name), bytes);
            throw new AssertionError(name + ": " + difference.get() + "\n(all of it: " + DIFFERENT.resolve(name) + ")");
        }
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    @Test
    void everyFileBelongsToACase() throws IOException {
        Set<String> wanted = FrozenCase.all().stream()
                .flatMap(each -> each.kinds().stream().map(kind -> each.name() + "." + kind))
                .collect(Collectors.toCollection(TreeSet::new));
        wanted.add(FONTS.getFileName().toString());
        Set<String> there = new TreeSet<>();
        try (Stream<Path> files = Files.list(FrozenCase.RESULTS)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if (RENEW && !wanted.contains(name)) {
                    Files.delete(file);
                } else {
                    there.add(name);
                }
            }
        }
        assertTrue(wanted.containsAll(there), () -> there + " are more than " + wanted);
        assertEquals(RENEW ? there : wanted, there);
    }

    @Test
    void aShareOfAThousandthIsSeenAndALastBitIsNot() {
        assertTrue(FrozenText.difference("a 700.0 W\nb", "a 700.7 W\nb").isPresent());
        assertTrue(FrozenText.difference("x 0.5", "x -0.5").isPresent());
        assertTrue(FrozenText.difference("a\nb", "a\nb\n").isPresent());
        assertEquals(Optional.empty(), FrozenText.difference("x 0.30000000000000004,1E-9", "x 0.3,1E-9"));
    }
}

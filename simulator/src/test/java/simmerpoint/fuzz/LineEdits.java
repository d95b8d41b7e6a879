package simmerpoint.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/** Damage to a text: lines left out, doubled, swapped, cut off, and letters typed over. */
final class LineEdits {
    private static final List<String> TYPED = List.of(
            ":",
            "{",
            "}",
            "[",
            "]",
            "\"",
            "'",
            "#",
            "-",
            " ",
            "  ",
            "\t",
            "&a",
            "*a",
            "!",
            "|",
            ">",
            ",",
            "%",
            "\u0007",
            "\u001b[31m",
            "\u202e",
            "\u0000",
            "\ufeff",
            "1e999",
            "-",
            "9",
            ".",
            "/",
            "NaN",
            "é",
            "\ud83d\udd25");

    private LineEdits() {}

    /** One to {@code most} pieces of damage. */
    static List<UnaryOperator<List<String>>> some(SplittableRandom random, int most) {
        List<UnaryOperator<List<String>>> edits = new ArrayList<>();
        int count = 1 + random.nextInt(most);
        for (int i = 0; i < count; i++) {
            edits.add(one(random));
        }
        return edits;
    }

    private static UnaryOperator<List<String>> one(SplittableRandom random) {
        double at = random.nextDouble();
        double to = random.nextDouble();
        String typed = RandomValues.pick(TYPED, random);
        return switch (random.nextInt(6)) {
            case 0 -> on(lines -> lines.remove(index(lines, at)));
            case 1 -> on(lines -> lines.add(index(lines, to), lines.get(index(lines, at))));
            case 2 -> on(lines -> lines.add(index(lines, to), lines.remove(index(lines, at))));
            case 3 -> on(lines -> change(lines, at, line -> line.substring(0, (int) (to * line.length()))));
            case 4 -> on(lines -> change(lines, at, line -> typed + line));
            default -> on(lines -> change(lines, at, line -> typedInto(line, to, typed)));
        };
    }

    private static String typedInto(String line, double share, String typed) {
        int at = (int) (share * line.length());
        return line.substring(0, at) + typed + line.substring(Math.min(line.length(), at + 1));
    }

    private static void change(List<String> lines, double share, UnaryOperator<String> how) {
        int at = index(lines, share);
        lines.set(at, how.apply(lines.get(at)));
    }

    private static int index(List<String> lines, double share) {
        return (int) (share * lines.size());
    }

    /** What a change of a list in place does to a copy; an empty list stays as it is. */
    private static UnaryOperator<List<String>> on(Change change) {
        return before -> {
            List<String> after = new ArrayList<>(before);
            if (!after.isEmpty()) {
                change.apply(after);
            }
            return after;
        };
    }

    private interface Change {
        void apply(List<String> lines);
    }
}

package simmerpoint.command;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.keys.NearestWord;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;

/** Reads the wishes and limits of a design; each refuses with a sentence what it does not take. */
final class DesignConverters {
    private static final String TO = "..";
    private static final Pattern SHEET = Pattern.compile("([^x\u00d7]+)[x\u00d7]([^x\u00d7]+)");
    private static final Pattern UNIT = Pattern.compile(".*[0-9.]\\s*([\\p{L}\"'\u2032\u2033]+)\\s*");
    private static final int LONGEST_CENTIMETRES = 2000;
    private static final int MOST = 10_000;
    private static final double MOST_WATTS = 1e6;

    private DesignConverters() {}

    private static TypeConversionException refused(String text, String allowed) {
        return new TypeConversionException("\"" + text + "\" is not " + allowed);
    }

    private static double quantity(String text, Dimension dimension, String example) {
        try {
            return QuantityParser.parse(text, dimension, example);
        } catch (QuantityException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }

    /** The two ends of "a..b"; "..b" and "a.." leave one open (null). */
    private static String[] ends(String text, String allowed) {
        int at = text.indexOf(TO);
        if (at < 0 || text.indexOf(TO, at + TO.length()) >= 0) {
            throw refused(text, allowed);
        }
        String from = text.substring(0, at).strip();
        String to = text.substring(at + TO.length()).strip();
        if (from.isEmpty() && to.isEmpty()) {
            throw refused(text, allowed);
        }
        return new String[] {from.isEmpty() ? null : from, to.isEmpty() ? null : to};
    }

    /** A range of which one end may be left open. */
    record Range(Integer from, Integer to) {
        DesignLimits.Span or(DesignLimits.Span usual) {
            int low = from != null ? from : Math.min(usual.from(), to);
            int high = to != null ? to : Math.max(usual.to(), low);
            return new DesignLimits.Span(low, high);
        }
    }

    private static Range range(String text, Integer from, Integer to) {
        if (from != null && to != null && from > to) {
            throw new TypeConversionException("\"" + text + "\" runs the wrong way: the smaller end comes first");
        }
        return new Range(from, to);
    }

    /** 60cm..1.2m, in whole centimetres. */
    static final class Lengths implements ITypeConverter<Range> {
        @Override
        public Range convert(String text) {
            String[] ends = ends(text, "a range of lengths; write for instance 60cm..1.2m, ..1.2m or 60cm..");
            return range(text, centimetres(ends[0]), centimetres(ends[1]));
        }

        private static Integer centimetres(String end) {
            if (end == null) {
                return null;
            }
            long whole = Math.round(100 * quantity(end, Dimension.LENGTH, "60 cm or 24 in"));
            if (!(whole >= 1 && whole <= LONGEST_CENTIMETRES)) {
                throw refused(end, "a length from 1 cm to 20 m");
            }
            return (int) whole;
        }
    }

    /** 120: money of the file's currency. */
    static final class Amount implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            double amount = quantity(text, Dimension.NUMBER, "120");
            if (!(amount > 0)) {
                throw refused(text, "an amount above 0; write for instance 120");
            }
            return amount;
        }
    }

    /** 8..24. */
    static final class Counts implements ITypeConverter<Range> {
        @Override
        public Range convert(String text) {
            String allowed = "a range of whole numbers; write for instance 8..24, ..24 or 8..";
            String[] ends = ends(text, allowed);
            return range(text, count(ends[0], text, allowed), count(ends[1], text, allowed));
        }

        private static Integer count(String end, String text, String allowed) {
            if (end == null) {
                return null;
            }
            try {
                int n = Integer.parseInt(end);
                if (n >= 1 && n <= MOST) {
                    return n;
                }
            } catch (NumberFormatException e) {
                throw refused(text, allowed);
            }
            throw refused(text, allowed);
        }
    }

    /** 50x70cm. */
    static final class Sheet implements ITypeConverter<DesignLimits.Sheet> {
        @Override
        public DesignLimits.Sheet convert(String text) {
            Matcher m = SHEET.matcher(text);
            if (!m.matches()) {
                throw refused(text, "the size of a sheet; write for instance 50x70cm or 20inx30in");
            }
            String second = m.group(2);
            Matcher unit = UNIT.matcher(second);
            String first =
                    UNIT.matcher(m.group(1)).matches() || !unit.matches() ? m.group(1) : m.group(1) + unit.group(1);
            double a = quantity(first.strip(), Dimension.LENGTH, "50x70cm");
            double b = quantity(second.strip(), Dimension.LENGTH, "50x70cm");
            if (!(a > 0 && b > 0)) {
                throw refused(text, "the size of a sheet: both sides are above 0");
            }
            return new DesignLimits.Sheet(Math.max(a, b), Math.min(a, b));
        }
    }

    /** 500 W. */
    static final class Watts implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            double watts = quantity(text, Dimension.POWER, "400 W or 0.4 kW");
            if (!(watts > 0 && watts <= MOST_WATTS)) {
                throw refused(text, "a power above 0 and up to 1 MW; write for instance 400W");
            }
            return watts;
        }
    }

    /** 1.1 m. */
    static final class Height implements ITypeConverter<Double> {
        @Override
        public Double convert(String text) {
            double height = quantity(text, Dimension.LENGTH, "1.1 m or 43 in");
            if (!(height > 0 && height <= LONGEST_CENTIMETRES / 100.0)) {
                throw refused(text, "a height above 0 and up to 20 m; write for instance 1.1m");
            }
            return height;
        }
    }

    /** keep-warm, simmer, boil, fast-boil. */
    static final class Level implements ITypeConverter<HeatLevel> {
        @Override
        public HeatLevel convert(String text) {
            String asked = text.strip().toLowerCase(Locale.ROOT);
            for (HeatLevel level : levels()) {
                if (word(level).equals(asked) || LevelWords.of(level).equals(asked)) {
                    return level;
                }
            }
            List<String> words = levels().stream().map(Level::word).toList();
            String hint = NearestWord.of(asked, words)
                    .map(near -> "; did you mean " + near + "?")
                    .orElse("");
            throw refused(text, "a heat level: " + String.join(", ", words) + hint);
        }

        private static List<HeatLevel> levels() {
            return Arrays.stream(HeatLevel.values())
                    .filter(level -> level != HeatLevel.TOO_COOL)
                    .toList();
        }

        private static String word(HeatLevel level) {
            return LevelWords.of(level).replace(' ', '-');
        }
    }

    /** flat-rings, bent-strips or both. */
    static final class Cuts implements ITypeConverter<DesignCuts> {
        @Override
        public DesignCuts convert(String text) {
            for (DesignCuts cuts : DesignCuts.CHOICES) {
                if (cuts.word().equals(text.strip().toLowerCase(Locale.ROOT))) {
                    return cuts;
                }
            }
            throw refused(
                    text,
                    "a cut to build: "
                            + DesignCuts.CHOICES.stream().map(DesignCuts::word).collect(Collectors.joining(", ")));
        }
    }
}

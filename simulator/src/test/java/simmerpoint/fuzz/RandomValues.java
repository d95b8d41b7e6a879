package simmerpoint.fuzz;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.KeyRange;
import simmerpoint.units.Dimension;

/** Values for a key: the ends of its range, what lies just inside and just beyond, its words, and nonsense. */
public final class RandomValues {
    private static final double STEP = 1e-6;
    private static final List<String> NONSENSE = List.of(
            "",
            " ",
            "~",
            "0",
            "-1",
            "1e308 m",
            "1e-308 m",
            "NaN",
            "inf",
            "1,5 m",
            "5 parsec",
            "[1 m]",
            "{a: b}",
            "\u0000",
            "\u202e1 m",
            "±",
            "3 m ± 4 m",
            "1 m ± 200 %",
            "'",
            "- -",
            "#",
            "\ud800",
            "1 ½ in",
            "99999999999999999999");

    private RandomValues() {}

    /** Both ends of the range, in SI units, as they would be typed; a nearby value where an end itself is not allowed. */
    static List<String> ends(Key key) {
        KeyRange range = key.range();
        List<String> ends = new ArrayList<>();
        if (range != null) {
            ends.add(typed(key, range.nearest(range.low())));
            ends.add(typed(key, range.nearest(range.high())));
        }
        return ends;
    }

    /** Some value for the key, four times in five one that its range or words allow. */
    static String of(Key key, SplittableRandom random) {
        List<String> good = new ArrayList<>(key.words());
        good.addAll(ends(key));
        good.add(key.example());
        if (key.defaultIsValue()) {
            good.add(key.defaultText());
        }
        if (random.nextInt(5) == 0) {
            return pick(bad(key), random);
        }
        return key.range() != null && random.nextBoolean() ? inside(key, random) : pick(good, random);
    }

    private static List<String> bad(Key key) {
        List<String> bad = new ArrayList<>(NONSENSE);
        if (key.range() != null) {
            bad.add(typed(key, key.range().low() - STEP));
            bad.add(typed(key, key.range().high() + STEP));
        }
        return bad;
    }

    /** Somewhere in the range, as often near its low end as far from it. */
    private static String inside(Key key, SplittableRandom random) {
        KeyRange range = key.range();
        double share = random.nextBoolean() ? random.nextDouble() : Math.pow(10, -6 * random.nextDouble());
        return typed(key, range.nearest(range.low() + share * (range.high() - range.low())));
    }

    /** One of a list. */
    public static <V> V pick(List<V> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }

    private static String typed(Key key, double si) {
        if (key.kind() == Key.Kind.COUNT) {
            return String.valueOf(Math.round(si));
        }
        if (key.kind() == Key.Kind.LATITUDE || key.kind() == Key.Kind.LONGITUDE) {
            return plain(Math.toDegrees(si)) + "°";
        }
        return (plain(si) + " " + unit(key.dimension())).trim();
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).toPlainString();
    }

    private static String unit(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "m";
            case ANGLE -> "rad";
            case SHARE, NUMBER, COUNT -> "";
            case IRRADIANCE -> "W/m²";
            case TIME -> "s";
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "K";
            case POWER -> "W";
            case MASS, WATER -> "kg";
            case VOLUME -> "m³";
            case STEAM -> "kg/(h·m²)";
            case SPEED -> "m/s";
            case PRESSURE -> "Pa";
            case TENSION -> "N/m";
        };
    }
}

package simmerpoint.answer.words;

import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.FryingAssessment;
import simmerpoint.heat.FryingLevel;
import simmerpoint.heat.HeatLevel;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.DecimalFormatter;
import simmerpoint.units.UnitSystem;

/** What heat does to a pan, in a cook's words. Every range is the middle four fifths of pans like this one. */
public final class HeatWords {
    private static final double QUART_LITRES = 0.946352946;
    private static final double MINUTE = 60;
    private static final long LONG_MINUTES = 120;
    private static final double DAY_SECONDS = 86_400;

    private final UnitSystem system;

    /** In these units: °C and litres, or °F and quarts. */
    public HeatWords(UnitSystem system) {
        this.system = system;
    }

    /** What the water does: "the water simmers". */
    public static String does(HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> "the water stays too cool to hold food safely";
            case KEEP_WARM -> "the water keeps food warm and does not simmer";
            case SIMMER -> "the water simmers";
            case BOIL -> "the water boils";
            case FAST_BOIL -> "the water boils hard";
        };
    }

    /** What the middle of a pan does when it fries. */
    public static String does(FryingLevel level) {
        return switch (level) {
            case NO_FRYING -> "too weak to fry: food stews in its own water";
            case GENTLE -> "enough to fry gently: eggs, onions, pancakes, with patience";
            case FRY -> "enough to fry: it browns meat and potatoes";
            case SEAR -> "enough to sear, as a large gas ring on full";
        };
    }

    /** How evenly a pan fries. */
    public static String does(FryingAssessment.Spread spread) {
        return switch (spread) {
            case EVEN -> "evenly, as a thick pan on a hob";
            case PATCHY -> "in patches, so that food has to be stirred or turned about";
            case HOT_SPOT -> "with a hot spot, which burns food in one place while it stays pale elsewhere";
        };
    }

    /** "83 °C" or "181 °F". */
    public String temperature(double celsius) {
        return degrees(celsius) + unit();
    }

    /** To the nearest ten: "240 °C" or "460 °F". */
    public String roughly(double celsius) {
        return tens(celsius) + unit();
    }

    /** To the nearest ten: "370 to 450 °C". */
    public String roughly(LikelyRange celsius) {
        return FigureFormat.span(tens(celsius.low()), tens(celsius.high())) + unit();
    }

    private String tens(double celsius) {
        double shown = system == UnitSystem.INCH ? celsius * 9 / 5 + 32 : celsius;
        return FigureFormat.fixed((double) (10 * Math.round(shown / 10)), 0);
    }

    /** "83 °C (78 to 88 °C)", or "83 °C" where the range is too narrow to be told. */
    public String temperature(LikelyRange celsius) {
        String low = degrees(celsius.low());
        String high = degrees(celsius.high());
        String likely = temperature(celsius.likely());
        return low.equals(high) ? likely : likely + " (" + low + "\u00a0to\u00a0" + high + unit() + ")";
    }

    /** "62 to 70 °C". */
    String span(LikelyRange celsius) {
        String low = degrees(celsius.low());
        String high = degrees(celsius.high());
        return FigureFormat.span(low, high) + unit();
    }

    private String degrees(double celsius) {
        return FigureFormat.fixed(system == UnitSystem.INCH ? celsius * 9 / 5 + 32 : celsius, 0);
    }

    private String unit() {
        return FigureFormat.NBSP + (system == UnitSystem.INCH ? "\u00b0F" : "\u00b0C");
    }

    /** A difference of temperature. */
    public String difference(LikelyRange kelvin) {
        double scale = system == UnitSystem.INCH ? 1.8 : 1;
        String low = FigureFormat.fixed(kelvin.low() * scale, 0);
        String high = FigureFormat.fixed(kelvin.high() * scale, 0);
        return FigureFormat.span(low, high) + unit();
    }

    /** "1.9 l of water", "2 quarts of water". */
    public String water(double kilograms) {
        return volume(kilograms) + " of water";
    }

    /** "1.9 l", "2 quarts". */
    public String volume(double litres) {
        double amount = system == UnitSystem.INCH ? litres / QUART_LITRES : litres;
        String text = DecimalFormatter.stripped(FigureFormat.rounded(amount, 2));
        return text + FigureFormat.NBSP + (system == UnitSystem.INCH ? "quarts" : "l");
    }

    /** "28 to 33 min", "about 30 min", "2 h 10 min to 3 h". */
    public static String minutes(LikelyRange seconds) {
        long low = whole(seconds.low());
        long high = whole(seconds.high());
        if (high < 1) {
            return "less than a minute";
        }
        if (high <= LONG_MINUTES) {
            return low == high
                    ? "about " + low + FigureFormat.NBSP + "min"
                    : low + "\u00a0to\u00a0" + high + FigureFormat.NBSP + "min";
        }
        String from = time(seconds.low());
        String to = seconds.high() >= DAY_SECONDS ? "a day or longer" : time(seconds.high());
        return from.equals(to) ? "about " + from : from + " to " + to;
    }

    /** "35 min", "2 h 10 min". */
    public static String time(double seconds) {
        long minutes = whole(seconds);
        if (minutes <= LONG_MINUTES) {
            return minutes + FigureFormat.NBSP + "min";
        }
        long rounded = 5 * Math.round(minutes / 5.0);
        long rest = rounded % 60;
        return rounded / 60 + FigureFormat.NBSP + "h"
                + (rest > 0 ? FigureFormat.NBSP + rest + FigureFormat.NBSP + "min" : "");
    }

    private static long whole(double seconds) {
        return Math.round(seconds / MINUTE);
    }

    /** The same where it then ends up at {@code level}: "comes to the boil in 46 to 74 min and then simmers". */
    String boil(BoilingOutcome answer, HeatLevel level) {
        return endsGently(answer, level)
                ? "comes to the boil in " + minutes(((BoilingOutcome.Boils) answer).seconds()) + " and then simmers"
                : boil(answer);
    }

    /** Whether water that boils makes so little steam that it counts as a simmer. */
    public static boolean endsGently(BoilingOutcome answer, HeatLevel level) {
        return level == HeatLevel.SIMMER && answer instanceof BoilingOutcome.Boils;
    }

    /** What water does on its way: "boils in 28 to 33 min", "never boils: settles at 83 °C (78 to 88 °C)". */
    public String boil(BoilingOutcome answer) {
        if (answer instanceof BoilingOutcome.Boils boils) {
            return "boils in " + minutes(boils.seconds());
        }
        if (answer instanceof BoilingOutcome.MayBoil may) {
            String soonest = time(may.soonestSeconds());
            return "may or may not boil: with little wind it boils in " + soonest
                    + " or somewhat later, with more it settles at "
                    + temperature(may.settlesCelsius().low());
        }
        return "never boils: settles at " + temperature(((BoilingOutcome.Never) answer).settlesCelsius());
    }

    /** The same as a figure: "28 to 33 min", "45 min or never", "never (62 to 70 °C)". */
    String untilItBoils(BoilingOutcome answer) {
        if (answer instanceof BoilingOutcome.Boils boils) {
            return minutes(boils.seconds());
        }
        if (answer instanceof BoilingOutcome.MayBoil may) {
            return time(may.soonestSeconds()) + " or never";
        }
        return "never (" + span(((BoilingOutcome.Never) answer).settlesCelsius()) + ")";
    }
}

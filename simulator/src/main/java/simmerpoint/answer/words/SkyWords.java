package simmerpoint.answer.words;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.aim.MisaimDirection;
import simmerpoint.units.DecimalFormatter;

/** Angles and directions on the sky in words. */
public final class SkyWords {
    private static final double ASIDE = 0.15;
    private static final double ROUGH_MINUTES = 4.95;

    private SkyWords() {}

    /** "1.4°": two digits that count, none finer than a hundredth. */
    public static String angle(double radians) {
        double degrees = Math.toDegrees(Math.abs(radians));
        return degrees < 0.095
                ? FigureFormat.fixed(degrees, 2) + "\u00b0"
                : FigureFormat.rounded(degrees, 2) + "\u00b0";
    }

    /** "2.91 ± 0.02°". */
    public static String angle(Estimate radians) {
        return FigureFormat.withError(radians.times(180 / Math.PI), "") + "\u00b0";
    }

    /** "up and to the right": parts below a seventh of the whole are left out. */
    public static String way(double up, double side) {
        double least = ASIDE * Math.hypot(up, side);
        List<String> parts = new ArrayList<>();
        if (Math.abs(up) > least) {
            parts.add(up > 0 ? "up" : "down");
        }
        if (Math.abs(side) > least) {
            parts.add(side > 0 ? "to the right" : "to the left");
        }
        return String.join(" and ", parts);
    }

    /** Which way on the dish that is: "towards the dish's upper edge and to the right (facing the sun)". */
    public static String onDish(double up, double side) {
        double least = ASIDE * Math.hypot(up, side);
        List<String> parts = new ArrayList<>();
        if (Math.abs(up) > least) {
            parts.add("towards the dish\u2019s " + (up > 0 ? "upper" : "lower") + " edge");
        }
        if (Math.abs(side) > least) {
            parts.add(side > 0 ? TargetWords.RIGHT : TargetWords.LEFT);
        }
        return String.join(" and ", parts);
    }

    /** What is off, for a table: "dish too high", "sun gone right". */
    public static String off(MisaimDirection way) {
        return switch (way) {
            case DRIFT_UP -> "sun gone up";
            case DRIFT_DOWN -> "sun gone down";
            case DRIFT_RIGHT -> "sun gone right";
            case DRIFT_LEFT -> "sun gone left";
            case TURN_UP -> "dish too high";
            case TURN_DOWN -> "dish too low";
            case TURN_RIGHT -> "dish too far right";
            case TURN_LEFT -> "dish too far left";
        };
    }

    /** A share that is asked for: "10 %", "2.5 %". */
    public static String loss(double share) {
        return DecimalFormatter.stripped(FigureFormat.rounded(100 * share, 3)) + FigureFormat.NBSP + "%";
    }

    /**
     * How long the sun takes: "3.8 min", "13 min", "2 h 10 min". Whole minutes from 5 on: the quickest searches know an
     * angle to 4 %, so a tenth of a minute more or less is chance.
     */
    public static String minutes(double minutes) {
        return minutes < ROUGH_MINUTES
                ? FigureFormat.fixed(minutes, 1) + FigureFormat.NBSP + "min"
                : HeatWords.time(60 * minutes);
    }
}

package simmerpoint.answer.trial;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.trial.power.TestCondition;
import simmerpoint.trial.power.TestCondition.Check;

/** What the standard asks of a test, in words. */
final class ConditionWords {
    private ConditionWords() {}

    static String asked(TestCondition condition) {
        return switch (condition) {
            case LOAD -> "about 7 kg of water for each m² of aperture";
            case WIND -> "wind below 1 m/s";
            case AIR -> "air of 20 to 35 °C";
            case IRRADIANCE -> "450 to 1100 W/m² in every interval";
            case STEADY_LIGHT -> "changing by less than 100 W/m² in it";
            case WATER -> "water from 5 K above the air to 5 K below boiling";
            case READINGS -> "readings at most 10 min apart";
            case INTERVALS -> "30 intervals";
            case DAYS -> "of three days";
            case DETERMINATION -> "R² of the line above 0.75";
        };
    }

    static String verdict(Check check) {
        return switch (check.verdict()) {
            case MET -> "met";
            case NOT_MET -> "not met";
            case UNKNOWN -> "not known";
        };
    }

    static String found(Check check) {
        if (check.verdict() == TestCondition.Verdict.UNKNOWN) {
            return "";
        }
        int digits = check.condition() == TestCondition.INTERVALS || check.condition() == TestCondition.DAYS ? 0 : 2;
        String low = text(check.low(), digits);
        String high = text(check.high(), digits);
        return check.condition() == TestCondition.WATER
                ? FigureFormat.fixed(check.low(), 0) + " K"
                : FigureFormat.span(low, high);
    }

    private static String text(double value, int significant) {
        return significant == 0 || Math.abs(value) >= 100 || value == 0
                ? FigureFormat.fixed(value, 0)
                : FigureFormat.rounded(value, significant);
    }
}

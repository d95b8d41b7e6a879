package simmerpoint.answer.safety;

import java.util.OptionalDouble;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.kitchen.KitchenRisks;
import simmerpoint.safety.risk.Stuff;

/**
 * What the light does to food, pan and handle, in words.
 *
 * @param kitchen what was found
 * @param result all of it
 * @param figures in the reader's units
 */
record KitchenWords(KitchenRisks kitchen, SafetyResult result, FigureFormat figures) {
    private static final double HOUR = 3600;

    /** From here on metal in the light gets too hot to hold, W/m²: engineering judgement. */
    private static final double HOT = 1_600;

    Section section() {
        return Section.headed("Food, pan and handle")
                .say(dry())
                .say(empty())
                .say(food())
                .say(handle())
                .build();
    }

    private String dry() {
        return kitchen.dryHours()
                .map(hours -> "Left boiling, all of its water is gone "
                        + TimeWords.minutes(HOUR * hours.low(), HOUR * hours.high())
                        + " after the first boil; an empty pan then gets as hot as said next.")
                .orElse("It does not boil dry by itself in this sun; its water still goes down, so look after it.");
    }

    private String empty() {
        double celsius = kitchen.emptyCelsius();
        String most = heat().roughly(celsius);
        String middle = heat().roughly(kitchen.emptyMiddleCelsius());
        String hot = "Empty but for a film of oil and with the lid off its bottom gets to about " + most
                + (middle.equals(most) ? ". " : " at its hottest place, " + middle + " in its middle. ");
        if (celsius > KitchenRisks.ALUMINIUM_CELSIUS) {
            return hot
                    + "Non-stick coating fails and gives off fumes, plastic and solder melt, and thin aluminium sags:"
                    + " never uncover the mirror under an empty pan.";
        }
        return celsius > KitchenRisks.NON_STICK_CELSIUS
                ? hot + "Non-stick coating fails above about " + heat().roughly(KitchenRisks.NON_STICK_CELSIUS)
                        + " and gives off fumes; oil burns: never uncover the mirror under an empty pan."
                : hot + "Oil smokes near that: do not leave it empty.";
    }

    private String food() {
        String under = "Under food that lies still the bottom gets to about " + heat().roughly(kitchen.foodCelsius());
        return kitchen.foodCelsius() >= KitchenRisks.SCORCH_CELSIUS
                ? under + ": it burns on unless it is stirred or the mirror is covered."
                : under + ", which does not burn on.";
    }

    private String handle() {
        String at = "A handle beside the pan gets up to " + figures.roughFlux(kitchen.handle()) + " where it points "
                + side(kitchen.handleRadians()) + ". ";
        OptionalDouble charred = Stuff.WOOD.harmed(kitchen.handle());
        if (charred.isPresent()) {
            return at + "Wood chars there within " + TimeWords.after(charred.getAsDouble())
                    + ": turn handles to where the light does not pass, or shield them.";
        }
        return kitchen.handle() > HOT
                ? at + "Metal there gets too hot to hold: use a cloth, and turn handles out of the light."
                : at + "That is hardly more than sunshine; it still gets hot from the pan.";
    }

    private static String side(double radians) {
        double degrees = Math.toDegrees(radians);
        double off = Math.abs(degrees);
        if (off < 45) {
            return "towards the sun";
        }
        return off > 135
                ? "away from the sun"
                : degrees > 0 ? "to the right, facing the sun" : "to the left, facing the sun";
    }

    private HeatWords heat() {
        return new HeatWords(figures.system());
    }
}

package simmerpoint.answer.safety;

import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.safety.person.PersonLight;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;

/** What the light does to a grown-up who stands somewhere beside the cooker, in words. */
public final class PersonWords {
    private PersonWords() {}

    /** "135 cm from the focus", "at the focus". */
    public static String gap(PersonLight person, UnitSystem system) {
        return person.gap() > 0 ? ReachWords.whole(person.gap(), system) + " from the focus" : "at the focus";
    }

    /** "135 cm from the focus, on the sun's side". */
    public static String place(PersonLight person, Scenario scenario, UnitSystem system) {
        if (person.gap() <= 0) {
            return ShortAnswer.capital(gap(person, system));
        }
        return gap(person, system) + ", "
                + (person.isTowardsSun(scenario) ? "on the sun\u2019s side" : "on the dish\u2019s side");
    }

    /** "132 cm from the focus: 1.2 kW/m². Skin gets warm there, not too hot." */
    public static String brief(PersonLight person, UnitSystem system) {
        String gap = ShortAnswer.capital(gap(person, system));
        return person.light().reflected() < 1
                ? gap + ": no light of the mirrors."
                : gap + ": " + new FigureFormat(system).roughFlux(person.light().together()) + ". "
                        + Cautions.skinHere(person.light().together());
    }

    /** Where the light is strongest on that person, and what it does there. */
    public static String sentence(PersonLight person, UnitSystem system) {
        double flux = person.light().together();
        FigureFormat figures = new FigureFormat(system);
        String height = figures.length(person.place().z(), 2) + " above the ground";
        if (person.light().reflected() < 1) {
            return "No light of the mirrors reaches this person.";
        }
        return "The strongest light on this person is " + figures.roughFlux(flux) + ", " + height + ". "
                + Cautions.skinHere(flux);
    }
}

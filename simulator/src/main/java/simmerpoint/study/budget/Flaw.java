package simmerpoint.study.budget;

import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import simmerpoint.scenario.Scenario;

/**
 * One thing in which a cooker falls short of a perfect one, and what the cooker would be without it. Remedies of different
 * flaws do not touch each other: in whatever order they are applied, the same cooker comes out.
 *
 * @param key short name for files, for instance slope-error
 * @param name in a builder's words, for instance "slope error"
 * @param remedy the same scenario without this flaw; equal to the scenario itself where the flaw is absent
 * @param fixed whether a scenario has this flaw or may have it, and it cannot be switched off there
 */
public record Flaw(String key, String name, UnaryOperator<Scenario> remedy, Predicate<Scenario> fixed) {
    /** A flaw that can always be switched off. */
    static Flaw of(String key, String name, UnaryOperator<Scenario> remedy) {
        return new Flaw(key, name, remedy, scenario -> false);
    }

    /** The scenario without this flaw. */
    public Scenario mended(Scenario scenario) {
        return remedy.apply(scenario);
    }

    /** Whether the scenario has this flaw. */
    public boolean isIn(Scenario scenario) {
        return !mended(scenario).equals(scenario);
    }
}

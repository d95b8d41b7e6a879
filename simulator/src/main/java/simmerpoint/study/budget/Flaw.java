package simmerpoint.study.budget;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import simmerpoint.scenario.Scenario;

/**
 * One thing in which a cooker falls short of a perfect one, and what the cooker would be without it. Remedies of different
 * flaws do not touch each other: in whatever order they are applied, the same cooker comes out.
 *
 * @param key short name for files, for instance slope-error
 * @param name in a builder's words, for instance "slope error"
 * @param remedy the same scenario without this flaw; equal to the scenario itself where the flaw is absent
 * @param size its size in a scenario; empty where no one figure tells it
 * @param fixed whether a scenario has this flaw or may have it, and it cannot be switched off there
 * @param mending who can mend it
 * @param advice what to do about it, a sentence; empty where nobody can mend it
 */
public record Flaw(
        String key,
        String name,
        UnaryOperator<Scenario> remedy,
        Function<Scenario, Optional<FlawSize>> size,
        Predicate<Scenario> fixed,
        Mending mending,
        String advice) {
    /** Who can mend a flaw. */
    public enum Mending {
        /** Careful hands. */
        BY_HAND,
        /** Only whoever buys another film or mirror. */
        BY_BUYING,
        /** Nobody. */
        NEVER
    }

    /** Refuses a flaw that can be mended and does not say how. */
    public Flaw {
        if (advice.isEmpty() != (mending == Mending.NEVER)) {
            throw new IllegalArgumentException(key + ": advice belongs to what can be mended, and only there");
        }
    }

    /** A flaw without a size that can always be switched off. */
    static Flaw of(String key, String name, Mending mending, String advice, UnaryOperator<Scenario> remedy) {
        return new Flaw(key, name, remedy, scenario -> Optional.empty(), scenario -> false, mending, advice);
    }

    /** The same with a size. */
    Flaw sized(FlawSize.Kind kind, ToDoubleFunction<Scenario> value) {
        return new Flaw(
                key,
                name,
                remedy,
                s -> Optional.of(new FlawSize(value.applyAsDouble(s), kind)),
                fixed,
                mending,
                advice);
    }

    /** The same with a size in some scenarios. */
    Flaw sizedBy(Function<Scenario, Optional<FlawSize>> value) {
        return new Flaw(key, name, remedy, value, fixed, mending, advice);
    }

    /** The same, but it cannot be switched off in some scenarios. */
    Flaw fixedIn(Predicate<Scenario> scenarios) {
        return new Flaw(key, name, remedy, size, scenarios, mending, advice);
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

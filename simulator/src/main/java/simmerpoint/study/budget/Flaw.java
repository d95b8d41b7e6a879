package simmerpoint.study.budget;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import simmerpoint.dish.Zone;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.scenario.Scenario;

/**
 * One thing in which a cooker falls short of a perfect one, and what the cooker would be without it. Remedies of different
 * flaws do not touch each other: in whatever order they are applied, the same cooker comes out.
 *
 * @param key short name for files, for instance slope-error, or patches.slope-error in one zone of a dish
 * @param name in a builder's words, for instance "slope error"
 * @param zone the zone of a dish whose flaw it is; empty if it is the whole dish's
 * @param remedy the same scenario without this flaw; equal to the scenario itself where the flaw is absent
 * @param size its size in a scenario; empty where no one figure tells it
 * @param fixed whether a scenario has this flaw or may have it, and it cannot be switched off there
 * @param mending who can mend it
 * @param advice what to do about it, a sentence; empty where nobody can mend it
 * @param inZone the same flaw in the zone of that name alone; empty if zones cannot differ in it
 */
public record Flaw(
        String key,
        String name,
        Optional<String> zone,
        UnaryOperator<Scenario> remedy,
        Function<Scenario, Optional<FlawSize>> size,
        Predicate<Scenario> fixed,
        Mending mending,
        String advice,
        Optional<Function<String, Flaw>> inZone) {
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
        return new Flaw(
                key,
                name,
                Optional.empty(),
                remedy,
                scenario -> Optional.empty(),
                scenario -> false,
                mending,
                advice,
                Optional.empty());
    }

    /** The same with a size. */
    Flaw sized(FlawSize.Kind kind, ToDoubleFunction<Scenario> value) {
        return sizedBy(s -> Optional.of(new FlawSize(value.applyAsDouble(s), kind)));
    }

    /** The same with a size in some scenarios. */
    Flaw sizedBy(Function<Scenario, Optional<FlawSize>> value) {
        return new Flaw(key, name, zone, remedy, value, fixed, mending, advice, inZone);
    }

    /** The same, but it cannot be switched off in some scenarios. */
    Flaw fixedIn(Predicate<Scenario> scenarios) {
        return new Flaw(key, name, zone, remedy, size, scenarios, mending, advice, inZone);
    }

    /** The same, and each zone of a dish has it for itself; {@code mended} is a scenario without it in the zone of a name. */
    Flaw byZone(BiFunction<Scenario, String, Scenario> mended) {
        Function<String, Flaw> one = named -> new Flaw(
                key(key, named),
                name,
                Optional.of(named),
                s -> mended.apply(s, named),
                s -> Optional.empty(),
                s -> false,
                mending,
                advice,
                Optional.empty());
        return new Flaw(key, name, zone, remedy, size, fixed, mending, advice, Optional.of(one));
    }

    /** The same, and in each zone its size is a figure of the mirror there; in a whole dish if all its mirrors have the same. */
    Flaw sizedByMirror(FlawSize.Kind kind, ToDoubleFunction<Mirror> figure) {
        Flaw whole = sizedBy(s -> {
            double[] figures =
                    s.mirrors().stream().mapToDouble(figure).distinct().toArray();
            return figures.length == 1 ? Optional.of(new FlawSize(figures[0], kind)) : Optional.empty();
        });
        return whole.withInZone(inZone.map(flaw ->
                named -> flaw.apply(named).sized(kind, s -> figure.applyAsDouble(s.mirror(named)))));
    }

    /** The key of something in one zone. */
    static String key(String whole, String zone) {
        return zone + "." + whole;
    }

    private Flaw withInZone(Optional<Function<String, Flaw>> other) {
        return new Flaw(key, name, zone, remedy, size, fixed, mending, advice, other);
    }

    /** Itself, or what it is in each zone of a dish where zones can differ in it. */
    Stream<Flaw> in(Scenario scenario) {
        List<Zone> zones = scenario.dish().cut().zones();
        return zones.isEmpty() || inZone.isEmpty()
                ? Stream.of(this)
                : zones.stream().map(each -> inZone.get().apply(each.name()));
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

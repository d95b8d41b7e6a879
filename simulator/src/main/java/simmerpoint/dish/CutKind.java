package simmerpoint.dish;

import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * What is known of a cut before a dish is cut so: all that the scenario file and the window need of it.
 *
 * @param word its word in scenario files, for instance flat-rings
 * @param meaning what the word means, for a list to choose from
 * @param parameters the keys that belong to it, the one that decides the number of panels first
 * @param traits what is true of it
 * @param maker makes the cut of its parameters' values
 */
public record CutKind(
        String word,
        String meaning,
        List<CutParameter> parameters,
        Set<CutTrait> traits,
        Function<CutValues, Cut> maker) {
    /** Keeps copies. */
    public CutKind {
        parameters = List.copyOf(parameters);
        traits = Set.copyOf(traits);
    }

    /** Whether it has a trait. */
    public boolean has(CutTrait trait) {
        return traits.contains(trait);
    }

    /** Whether a parameter belongs to it. */
    public boolean takes(CutParameter parameter) {
        return parameters.stream().anyMatch(own -> own.name().equals(parameter.name()));
    }
}

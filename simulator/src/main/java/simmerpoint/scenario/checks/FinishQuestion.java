package simmerpoint.scenario.checks;

import java.util.Optional;
import simmerpoint.pan.Finish;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.QuantityWriter;

/** Asks for the finish of a pan that is described without it: it decides over half of the heat. */
final class FinishQuestion {
    private static final String BARE = "dull stainless steel";

    private FinishQuestion() {}

    /** The question, if the file describes a pan and none of its finishes. */
    static Optional<String> of(ScenarioValues values) {
        boolean asked = values.hasSection("pan") && !values.has("pan.finish") && !values.has("pan.underside-finish");
        if (!asked) {
            return Optional.empty();
        }
        Finish taken = CookingBuilder.pan(values).finish();
        return Optional.of("pan.finish: not given; " + taken.name() + " is assumed, which takes up "
                + share(taken) + " of the light (" + BARE + ": "
                + share(FinishCatalogue.find(BARE).orElseThrow()) + "); say which it is");
    }

    private static String share(Finish finish) {
        return QuantityWriter.share(finish.absorptance());
    }
}

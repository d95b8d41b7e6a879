package simmerpoint.study.pan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.Scenario;

/** Chooses where a pan simmers most gently. */
final class SimmerSearch {
    /** A stretch must be so wide to be recommended, m: nobody sets a pan finer. */
    private static final double LEAST_WIDTH = 0.005;

    /** Hot spots this much stronger than the weakest count as equal: they are no better known. */
    private static final double ALIKE = 1.15;

    private SimmerSearch() {}

    /** In the middle of each stretch where it simmers. */
    static List<SimmerPlace> places(List<PanMove> moves) {
        return moves.stream()
                .flatMap(m -> m.stretches().stream()
                        .filter(s -> s.level() == HeatLevel.SIMMER && s.toMetres() - s.fromMetres() >= LEAST_WIDTH)
                        .map(s -> new SimmerPlace(m.move(), s, m.at(s.middleMetres()))))
                .toList();
    }

    /** Those at a height at which one can cook, if there are any; else all. */
    static List<SimmerPlace> inReach(List<SimmerPlace> places, Scenario scenario) {
        List<SimmerPlace> inReach = places.stream()
                .filter(p -> PanStudy.isInReach(scenario, p.move(), p.position().offsetMetres()))
                .toList();
        return inReach.isEmpty() ? places : inReach;
    }

    /** The one with the weakest hot spot on underside or wall; of those nearly alike, the one that need be set least finely. */
    static Optional<SimmerPlace> best(List<SimmerPlace> places) {
        double least = places.stream()
                .mapToDouble(p -> p.position().hottestFlux())
                .min()
                .orElse(0);
        return places.stream()
                .filter(p -> p.position().hottestFlux() <= ALIKE * least)
                .max(Comparator.comparingDouble(
                        p -> p.stretch().toMetres() - p.stretch().fromMetres()));
    }
}

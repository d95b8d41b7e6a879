package simmerpoint.trial.spot;

import java.util.List;
import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.checks.CheckedScenario;

/**
 * The spot on a card beside the traced one.
 *
 * @param scenario of the dish as it was meant
 * @param points at every distance
 * @param slopeError as fitted, rad, with its standard deviation
 * @param focalLength as fitted, m
 * @param misfit root mean square of measured − fitted in standard deviations of a reading
 * @param seed of the traces
 */
public record CardResult(
        CheckedScenario scenario,
        List<Point> points,
        Estimate slopeError,
        Estimate focalLength,
        double misfit,
        long seed) {
    /** Keeps its own list. */
    public CardResult {
        points = List.copyOf(points);
    }

    /**
     * One distance.
     *
     * @param reading what was seen
     * @param planned width of the traced spot of the dish as it was meant, m
     * @param fitted width of that of the fitted one, m
     * @param maps a photograph beside the traced light
     */
    public record Point(CardReading reading, double planned, double fitted, Optional<SpotComparison> maps) {}

    /** All photographs beside the traced light, the nearest card first. */
    public List<Point> photographed() {
        return points.stream().filter(p -> p.maps().isPresent()).toList();
    }
}

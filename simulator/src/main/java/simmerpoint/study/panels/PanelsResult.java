package simmerpoint.study.panels;

import java.util.Comparator;
import java.util.List;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.PanelWatts;

/**
 * All panels of a dish, by their light.
 *
 * @param scenario of what
 * @param watts what colours a picture of them
 * @param panels those that light falls on, in the order of their numbers
 * @param strongest the panel whose light is brightest where it is narrowest, alone and with nothing in its way
 * @param seed of the samples and of how the panels were glued
 * @param rays number of rays of each trace
 */
public record PanelsResult(
        Scenario scenario, PanelWatts watts, List<PanelFigures> panels, OnePanelLight strongest, long seed, long rays) {
    /** Keeps a copy of the list. */
    public PanelsResult {
        panels = List.copyOf(panels);
    }

    /** Those worth turning, that which brings most first. */
    public List<PanelFigures> worthTurning() {
        return panels.stream()
                .filter(PanelFigures::isWorthTurning)
                .sorted(Comparator.comparingDouble(PanelFigures::gain)
                        .reversed()
                        .thenComparingInt(PanelFigures::number))
                .toList();
    }

    /** The panel of which the least share lands. */
    public PanelFigures worst() {
        return panels.stream()
                .min(Comparator.comparingDouble(p -> p.share().value()))
                .orElseThrow();
    }

    /** What all panels send, W. */
    public double reflected() {
        return panels.stream().mapToDouble(PanelFigures::reflected).sum();
    }

    /** What of that lands, W. */
    public double caught() {
        return panels.stream().mapToDouble(PanelFigures::caught).sum();
    }

    /** What lands more once those worth turning are turned, W. */
    public double gain() {
        return worthTurning().stream().mapToDouble(PanelFigures::gain).sum();
    }
}

package simmerpoint.report;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.cooker.FrontDrawing;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;

/** The dish from the front with its words for the page. */
final class FrontFigure {
    private FrontFigure() {}

    static HtmlFigure of(Scenario scenario, UnitSystem system) {
        FrontDrawing front = new FrontDrawing(scenario, system);
        return HtmlFigure.drawing(
                front,
                "The dish from the sun’s side: " + new FigureFormat(system).length(2 * front.radiusMetres())
                        + " across, the " + TargetWords.of(scenario.target()).noun() + " before it.",
                "From the front, along the dish’s axis, its upper edge up; to scale."
                        + (front.panelSize().isPresent() ? " The size is that of the framed panel." : "")
                        + front.undrawnPanels()
                                .map(n -> " Its " + FigureFormat.count(n) + " panels are too small to be drawn.")
                                .orElse(""));
    }
}

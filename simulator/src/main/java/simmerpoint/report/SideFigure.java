package simmerpoint.report;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.cooker.SideDrawing;
import simmerpoint.drawing.cooker.SideScene;
import simmerpoint.drawing.cooker.SideScenes;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;

/** The cooker from its side with its words for the page. */
final class SideFigure {
    private SideFigure() {}

    static HtmlFigure of(Scenario scenario, UnitSystem system) {
        SideScene scene = SideScenes.of(scenario, system);
        FigureFormat figures = new FigureFormat(system);
        return HtmlFigure.drawing(
                SideDrawing.of(scene, system),
                "The cooker from its side: the sun "
                        + figures.degrees(scenario.sun().elevationRadians())
                        + " high at the upper right, the dish on its tripod at the left, the " + scene.noun() + " "
                        + figures.length(scene.geometry().panHeightMetres(), 2) + " above the ground.",
                "From the side, the sun to the right; to scale. The tripod is only a sketch.");
    }
}

package simmerpoint.answer.scenario;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.Scenario;

/** How a dish is cut, with the number and size of its panels and how much of the outline they cover. */
record CutWords(Scenario scenario, FigureFormat figures) {
    String cut() {
        DishPlan dish = scenario.dish();
        MirrorSurface surface = dish.surface(scenario.setup().sunInDish());
        double share = surface.apertureArea() / surface.outlineArea();
        String panels = dish.cut().description(dish, FigureFormat.count(surface.panels()), figures::length);
        return OneLine.of(panels) + (dish.cut().has(CutTrait.PANELS) ? "; they cover " : "; its mirror covers ")
                + figures.percent(Math.min(1, share)) + " of the outline";
    }
}

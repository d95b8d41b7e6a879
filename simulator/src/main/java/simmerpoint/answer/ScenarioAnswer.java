package simmerpoint.answer;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Mirror;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.scenario.Scenario;
import simmerpoint.sun.Sunlight;
import simmerpoint.units.UnitSystem;

/** What a scenario says, in a few lines: to see at a glance whether the file was understood as meant. */
public final class ScenarioAnswer {
    private final Scenario scenario;
    private final Figures figures;

    private ScenarioAnswer(Scenario scenario, Figures figures) {
        this.scenario = scenario;
        this.figures = figures;
    }

    /** The answer for {@code scenario}, in the units of {@code system}. */
    public static Answer of(Scenario scenario, UnitSystem system) {
        ScenarioAnswer answer = new ScenarioAnswer(scenario, new Figures(system));
        return new Answer(
                Words.oneLine(scenario.title()), List.of(new Section("What the scenario says", answer.items())));
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>(List.of(
                new Item.Figure("dish", dish()),
                new Item.Figure("cut", cut()),
                new Item.Figure("mirror", mirror()),
                new Item.Figure("sun", sun())));
        scenario.outdoors().ifPresent(outdoors -> items.addAll(OutdoorWords.items(outdoors, figures)));
        items.add(new Item.Figure("target", target()));
        scenario.kitchen()
                .ifPresent(kitchen ->
                        items.addAll(new KitchenWords(kitchen, figures.system()).items(scenario.ground(), figures)));
        return items;
    }

    private String dish() {
        DishPlan dish = scenario.dish();
        double depth = dish.radiusMetres() * dish.radiusMetres() / (4 * dish.focalLengthMetres());
        return figures.length(dish.diameterMetres()) + " across, focal length "
                + figures.length(dish.focalLengthMetres()) + ", " + figures.length(depth) + " deep, hub "
                + figures.length(dish.hubMetres()) + ", gaps " + figures.length(dish.gapMetres());
    }

    private String cut() {
        Cut cut = scenario.dish().cut();
        if (cut instanceof Cut.FlatRings rings) {
            return "flat panels, " + rings.sectors() + " sectors in " + rings.rings()
                    + (rings.rings() == 1 ? " ring" : " rings");
        }
        if (cut instanceof Cut.BentStrips strips) {
            return strips.sectors() + " strips bent along the ribs";
        }
        if (cut instanceof Cut.SquareTiles tiles) {
            return "square tiles of " + figures.length(tiles.tileMetres());
        }
        if (cut instanceof Cut.HexagonTiles tiles) {
            return "hexagon tiles of " + figures.length(tiles.tileMetres()) + " across their flats";
        }
        if (cut instanceof Cut.FromFile mesh) {
            return Figures.count(mesh.mesh().polygons())
                    + (mesh.mesh().polygons() == 1 ? " flat panel" : " flat panels") + " from "
                    + Words.oneLine(mesh.mesh().name());
        }
        return "smooth, not cut";
    }

    private String mirror() {
        Mirror mirror = scenario.mirror();
        return Words.oneLine(mirror.material()) + ": reflects " + figures.percent(mirror.reflectance())
                + ", scatters " + figures.percent(mirror.scattered()) + " of that, dust takes "
                + figures.percent(mirror.dust()) + "; slope error " + milliradians(mirror.slopeErrorRadians())
                + ", panel tilt " + milliradians(mirror.panelTiltRadians());
    }

    private static String milliradians(double radians) {
        return (radians == 0 ? "0" : Figures.rounded(radians * 1000, 2)) + Figures.NBSP + "mrad";
    }

    private String sun() {
        Sunlight sun = scenario.sun();
        return figures.degrees(sun.elevationRadians()) + " high, beam "
                + Figures.rounded(sun.beamWattsPerSquareMetre(), 3) + Figures.NBSP + "W/m\u00b2, "
                + Words.oneLine(sun.shape().describe());
    }

    private String target() {
        if (scenario.target() instanceof Pan pan) {
            return "pan " + figures.length(pan.diameterMetres()) + " across, " + figures.length(pan.heightMetres())
                    + " high, " + Words.oneLine(pan.finish().name()) + " (takes up "
                    + figures.percent(pan.finish().absorptance()) + ")";
        }
        Plane plane = (Plane) scenario.target();
        return "bare disc " + figures.length(plane.discMetres()) + " across, leaning "
                + figures.degrees(plane.leanRadians());
    }
}

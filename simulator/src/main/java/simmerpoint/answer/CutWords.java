package simmerpoint.answer;

import simmerpoint.dish.Cut;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.MirrorSurfaces;
import simmerpoint.dish.PanelSize;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;

/** How a dish is cut, with the number and size of its panels and how much of the outline they cover. */
record CutWords(Scenario scenario, Figures figures) {
    String cut() {
        Setup setup = scenario.setup();
        MirrorSurface surface = MirrorSurfaces.of(scenario.dish(), setup.sunInDish());
        double share = surface.apertureArea() / surface.outlineArea();
        String cover = scenario.dish().cut() instanceof Cut.Smooth ? "its mirror covers " : "they cover ";
        return kind(surface.panels())
                + PanelSize.of(scenario.dish()).map(this::size).orElse("") + "; " + cover
                + figures.percent(Math.min(1, share)) + " of the outline";
    }

    private String kind(int panels) {
        Cut cut = scenario.dish().cut();
        if (cut instanceof Cut.FlatRings rings) {
            return Figures.count(panels) + " flat panels, " + rings.sectors() + " sectors in " + rings.rings()
                    + (rings.rings() == 1 ? " ring" : " rings");
        }
        if (cut instanceof Cut.BentStrips strips) {
            return strips.sectors() + " strips bent along the ribs";
        }
        if (cut instanceof Cut.SquareTiles tiles) {
            return Figures.count(panels) + " square tiles of " + figures.length(tiles.tileMetres());
        }
        if (cut instanceof Cut.HexagonTiles tiles) {
            return Figures.count(panels) + " hexagon tiles of " + figures.length(tiles.tileMetres())
                    + " across their flats";
        }
        if (cut instanceof Cut.FromFile mesh) {
            return Figures.count(panels) + (panels == 1 ? " flat panel" : " flat panels") + " from "
                    + OneLine.of(mesh.mesh().name());
        }
        return "smooth, not cut";
    }

    private String size(PanelSize size) {
        return ", at the rim " + figures.length(size.rimMetres()) + " wide and " + figures.length(size.ribMetres())
                + " along the rib";
    }
}

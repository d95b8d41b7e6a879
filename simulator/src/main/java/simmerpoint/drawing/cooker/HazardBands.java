package simmerpoint.drawing.cooker;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.chart.Legend;
import simmerpoint.safety.risk.Hazard;

/**
 * Colours of places by the worst that their light does: pale to dark as it gets worse, so that they read in grey and by the
 * colour-blind. Each border between two of them is the contour of a threshold.
 */
final class HazardBands {
    private static final double PALE = 0.97;
    private static final double DARK = 0.12;
    private static final double SAMPLE = 16;

    private static final List<Hazard> BANDS = List.of(Hazard.values());

    /** Weaker light has no colour, W/m². */
    static final double LEAST = BANDS.get(0).wattsPerSquareMetre();

    /** Seen through, and pale, so that edges do not get dark where colours run into each other. */
    private static final int NONE = colour(BANDS.get(0)) & 0xFFFFFF;

    private HazardBands() {}

    /** 0xAARRGGBB for a flux, W/m²; nothing where no hazard is. */
    static int argb(double flux) {
        return Hazard.worst(flux).map(HazardBands::colour).orElse(NONE);
    }

    private static int colour(Hazard hazard) {
        return FluxColours.argb(PALE + (DARK - PALE) * BANDS.indexOf(hazard) / (BANDS.size() - 1));
    }

    /** Which colour means what. */
    static Legend legend() {
        Legend legend = new Legend();
        for (Hazard hazard : BANDS) {
            Raster colour = Raster.cells(1, 1, colour(hazard));
            legend.with(
                    SAMPLE,
                    (canvas, x, y) -> {
                        Box box = new Box(x, y - 10, SAMPLE, 11);
                        canvas.image(colour, box);
                        canvas.draw(Style.SWATCH, box);
                    },
                    words(hazard));
        }
        return legend;
    }

    private static String words(Hazard hazard) {
        String does = switch (hazard) {
            case DISCOMFORT -> "too hot for skin";
            case PAIN -> "skin hurts in 30 s";
            case SMOULDER -> "wood left for long smoulders";
            case TINDER -> "dry leaves burn in 30 s";
            case CHAR -> "leaves burn in 10 s, wood chars";
            case FLASH -> "leaves burn in 2 s";
            case BURST -> "plywood burns in 2 s";
        };
        double from = hazard.wattsPerSquareMetre() / 1000;
        return (from == Math.rint(from) ? Integer.toString((int) from) : Double.toString(from)) + "\u00a0kW/m\u00b2: "
                + does;
    }
}

package simmerpoint.workshop;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.dish.sheet.SheetMaterial;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * What is cut, and from what; lengths in m.
 *
 * @param ribMaterial sheet of the ribs
 * @param belowCurve what stays of a rib below its curve at the dish's middle
 * @param beyondRim how far ribs reach beyond the rim
 * @param throughRibs how many ribs run through the middle from rim to rim, each in place of two
 * @param notches in the foot of each rib for a ring, cross or brace that holds them, those asked for, from the middle outwards
 * @param panelMaterial sheet of the panels
 * @param overlap how far a panel reaches beyond each edge of its mirror, over its neighbour
 * @param sheet size of the sheets that ribs and panels are cut from
 * @param film size of a roll or sheet of film; its width first
 * @param filmGrain how the length of each piece must lie on the roll or sheet of film
 * @param filmEdge how far the film reaches beyond each edge of its mirror
 * @param spacing room between pieces on a sheet, for knife or saw
 * @param tripod what the dish stands on
 * @param prices of all that, if the scenario gives some
 */
public record CuttingStock(
        Sheeting ribMaterial,
        double belowCurve,
        double beyondRim,
        int throughRibs,
        List<Notch> notches,
        Sheeting panelMaterial,
        double overlap,
        Size sheet,
        Size film,
        SheetLayout.Grain filmGrain,
        double filmEdge,
        double spacing,
        Tripod tripod,
        Optional<Prices> prices) {

    /**
     * A notch in the foot of a rib.
     *
     * @param radius of its middle from the axis, m
     * @param width m
     * @param depth m
     */
    public record Notch(double radius, double width, double depth) {}

    /**
     * A rectangle.
     *
     * @param width m
     * @param length m
     */
    public record Size(double width, double length) {
        /** The same lying the other way. */
        Size transposed() {
            return new Size(length, width);
        }
    }

    /**
     * A sheet material of some thickness.
     *
     * @param material what it is
     * @param thickness m
     */
    public record Sheeting(SheetMaterial material, double thickness) {
        /** Mass per area, kg/m². */
        public double arealMass() {
            return material.density() * thickness;
        }
    }

    /**
     * A stand.
     *
     * @param mass with its mount and ballast, kg
     * @param feet how many
     * @param footRadius their distance from its middle, m
     */
    public record Tripod(double mass, int feet, double footRadius) {}

    /** What a scenario says under {@code build}. */
    public static CuttingStock of(ScenarioValues v) {
        return new CuttingStock(
                sheeting(v, "build.rib-material", "build.rib-thickness"),
                v.number("build.below-curve"),
                v.number("build.beyond-rim"),
                (int) v.number("build.through-ribs"),
                notches(v),
                sheeting(v, "build.panel-material", "build.panel-thickness"),
                v.number("build.panel-overlap"),
                new Size(v.number("build.sheet-width"), v.number("build.sheet-length")),
                new Size(v.number("build.film-width"), v.number("build.film-length")),
                SheetLayout.Grain.of(v.text("build.film-grain")),
                v.number("build.film-edge"),
                v.number("build.spacing"),
                new Tripod(v.number("build.stand-mass"), (int) v.number("build.feet"), v.number("build.foot-radius")),
                Prices.of(v));
    }

    private static List<Notch> notches(ScenarioValues v) {
        return Stream.of("build.notch-at", "build.second-notch-at")
                .map(v::number)
                .filter(radius -> radius > 0)
                .sorted()
                .map(radius -> new Notch(radius, v.number("build.notch-width"), v.number("build.notch-depth")))
                .toList();
    }

    private static Sheeting sheeting(ScenarioValues v, String material, String thickness) {
        return new Sheeting(SheetMaterial.named(v.text(material)), v.number(thickness));
    }
}

package simmerpoint.viewer.editing;

import java.util.Optional;
import simmerpoint.dish.mirror.Material;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.heat.PanMaterial;
import simmerpoint.pan.CatalogueFinish;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.scenario.keys.Key;
import simmerpoint.units.QuantityWriter;

/**
 * What is known of a word of choice.
 *
 * @param figures in one line
 * @param source who says so; empty for words that are no material
 */
record CatalogueEntry(String figures, String source) {
    /** What is known of that word at that key, if anything. */
    static Optional<CatalogueEntry> of(Key key, String word) {
        Optional<CatalogueEntry> row = Optional.empty();
        if (key.path().equals("mirror.material")) {
            row = MaterialCatalogue.find(word).map(CatalogueEntry::mirror);
        } else if (key.path().endsWith("finish")) {
            row = FinishCatalogue.all().stream()
                    .filter(finish -> finish.finish().name().equals(word))
                    .map(CatalogueEntry::finish)
                    .findFirst();
        } else if (key.path().startsWith("pan.") && key.path().endsWith("material")) {
            row = PanMaterial.find(word).map(CatalogueEntry::vessel);
        }
        return row.or(() -> KeyLabels.meaning(key, word).map(meaning -> new CatalogueEntry(meaning, "")));
    }

    private static CatalogueEntry mirror(Material material) {
        return new CatalogueEntry(
                "reflects " + QuantityWriter.share(material.reflectance()) + " (" + material.quality()
                        + "), slope error " + QuantityWriter.milliradians(material.slopeErrorRadians()),
                material.source());
    }

    private static CatalogueEntry finish(CatalogueFinish row) {
        return new CatalogueEntry(
                "takes up " + QuantityWriter.share(row.finish().absorptance()) + " of the sunlight (" + row.quality()
                        + ")",
                row.source());
    }

    private static CatalogueEntry vessel(PanMaterial material) {
        return new CatalogueEntry(
                Math.round(material.specificHeat()) + " J/(kg·K), conducts " + Math.round(material.conductivity())
                        + " W/(m·K)",
                material.source());
    }
}

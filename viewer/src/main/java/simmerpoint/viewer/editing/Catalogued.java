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
record Catalogued(String figures, String source) {
    /** What is known of that word at that key, if anything. */
    static Optional<Catalogued> of(Key key, String word) {
        Optional<Catalogued> row = Optional.empty();
        if (key.path().equals("mirror.material")) {
            row = MaterialCatalogue.find(word).map(Catalogued::mirror);
        } else if (key.path().endsWith("finish")) {
            row = FinishCatalogue.all().stream()
                    .filter(finish -> finish.finish().name().equals(word))
                    .map(Catalogued::finish)
                    .findFirst();
        } else if (key.path().equals("pan.material")) {
            row = PanMaterial.find(word).map(Catalogued::vessel);
        }
        return row.or(() -> KeyWords.meaning(key, word).map(meaning -> new Catalogued(meaning, "")));
    }

    private static Catalogued mirror(Material material) {
        return new Catalogued(
                "reflects " + QuantityWriter.share(material.reflectance()) + " (" + material.quality()
                        + "), slope error " + QuantityWriter.milliradians(material.slopeErrorRadians()),
                material.source());
    }

    private static Catalogued finish(CatalogueFinish row) {
        return new Catalogued(
                "takes up " + QuantityWriter.share(row.finish().absorptance()) + " of the sunlight (" + row.quality()
                        + ")",
                row.source());
    }

    private static Catalogued vessel(PanMaterial material) {
        return new Catalogued(
                Math.round(material.specificHeat()) + " J/(kg·K), conducts " + Math.round(material.conductivity())
                        + " W/(m·K)",
                material.source());
    }
}

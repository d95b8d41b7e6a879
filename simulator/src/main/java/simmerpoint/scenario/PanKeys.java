package simmerpoint.scenario;

import static simmerpoint.units.Dimension.LENGTH;
import static simmerpoint.units.Dimension.MASS;
import static simmerpoint.units.Dimension.TEMPERATURE;
import static simmerpoint.units.Dimension.WATER;

import java.util.List;
import simmerpoint.heat.PanMaterial;
import simmerpoint.pan.FinishCatalogue;

/** The keys of {@code pan}. */
final class PanKeys {
    private static final Range SIZE = Range.between(LENGTH, "1 mm", "50 m");

    private PanKeys() {}

    static List<Key> keys() {
        KeyMaker pan = KeyMaker.in("pan");
        return List.of(
                pan.length("diameter", "24 cm", "24 cm", SIZE, "Outer width of the pan; must be less than the dish's."),
                pan.length("height", "11 cm", "11 cm", SIZE, "Height of the pan up to its lid."),
                pan.word("finish", "black enamel", finishes(), "What the outside of the pan is like."),
                face(pan, "underside-finish", "What the underside is like, if not as the rest."),
                face(pan, "wall-finish", "What the wall is like, if not as the rest."),
                face(pan, "lid-finish", "What the lid is like, if not as the rest."),
                pan.word("material", "stainless steel", materials(), "What the pan is made of."),
                pan.quantity(
                        MASS,
                        "mass",
                        Key.FROM_SIZE,
                        "1.4 kg",
                        Range.between(MASS, "10 g", "500 kg"),
                        "Mass of the empty pan, with its lid if that is on."),
                pan.quantity(
                        WATER,
                        "water",
                        Key.FROM_HEIGHT,
                        "2 l",
                        Range.above(WATER, "0 l", "1000 l"),
                        "Water in it; soup, rice and beans count as water."),
                pan.quantity(
                        TEMPERATURE,
                        "water-temperature",
                        "20 °C",
                        "20 °C",
                        Range.between(TEMPERATURE, "0 °C", "100 °C"),
                        "Temperature of the water at the start."),
                pan.onOff("lid", "on", "Whether the lid is on."));
    }

    private static Key face(KeyMaker pan, String name, String sentence) {
        return pan.wordOrElse(name, Key.FROM_FINISH, "polished stainless steel", finishes(), sentence);
    }

    private static List<String> finishes() {
        return FinishCatalogue.all().stream().map(row -> row.finish().name()).toList();
    }

    private static List<String> materials() {
        return PanMaterial.all().stream().map(PanMaterial::name).toList();
    }
}

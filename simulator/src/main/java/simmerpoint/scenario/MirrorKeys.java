package simmerpoint.scenario;

import static simmerpoint.scenario.Key.FROM_MATERIAL;
import static simmerpoint.units.Dimension.ANGLE;
import static simmerpoint.units.Dimension.SHARE;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.mirror.Material;
import simmerpoint.dish.mirror.MaterialCatalogue;

/** The keys of {@code mirror}. */
final class MirrorKeys {
    static final String DEFAULT_MATERIAL = "aluminised polyester film";
    static final String OWN_FIGURES = "own figures";

    private static final Range ALL_OR_NONE = Range.between(SHARE, "0", "1");
    private static final Range SPREAD = Range.between(ANGLE, "0 mrad", "200 mrad");

    private MirrorKeys() {}

    static List<Key> keys() {
        KeyMaker mirror = KeyMaker.in("mirror");
        return List.of(
                mirror.word(
                        "material",
                        DEFAULT_MATERIAL,
                        materials(),
                        "What the panels are covered with; any figure below overrides the material's own."),
                mirror.share(
                        "reflectance",
                        FROM_MATERIAL,
                        "0.85",
                        ALL_OR_NONE,
                        "Share of the sunlight that the clean mirror throws back, in whatever direction."),
                mirror.share(
                        "scattered",
                        FROM_MATERIAL,
                        "0.02",
                        ALL_OR_NONE,
                        "Share of the reflected light that goes off in all directions, as from paper."),
                mirror.angle(
                        "slope-error",
                        FROM_MATERIAL,
                        "5 mrad",
                        SPREAD,
                        "How far the surface leans away from its intended shape from place to place (standard deviation per axis)."),
                mirror.angle(
                        "beam-spread",
                        FROM_MATERIAL,
                        "1 mrad",
                        SPREAD,
                        "How much the material itself blurs a reflected ray (standard deviation per axis)."),
                mirror.share(
                        "wide-share",
                        FROM_MATERIAL,
                        "0.05",
                        ALL_OR_NONE,
                        "Share of the reflected beam that is blurred by the wide spread instead."),
                mirror.angle(
                        "wide-spread",
                        FROM_MATERIAL,
                        "20 mrad",
                        SPREAD,
                        "The wide spread (standard deviation per axis)."),
                mirror.share(
                        "dust",
                        "0",
                        "0.03",
                        Range.below(SHARE, "0", "1"),
                        "Share of the light lost to dust on the mirror."),
                mirror.angle(
                        "panel-tilt",
                        "0 mrad",
                        "4 mrad",
                        SPREAD,
                        "How far whole panels are glued askew (standard deviation per axis)."));
    }

    /** The figures that come with the material where the file does not give them. */
    static List<Key> figures() {
        return Keys.all().stream()
                .filter(key -> FROM_MATERIAL.equals(key.defaultText()))
                .toList();
    }

    private static List<String> materials() {
        List<String> names = new ArrayList<>(
                MaterialCatalogue.all().stream().map(Material::name).toList());
        names.add(OWN_FIGURES);
        return names;
    }
}

package simmerpoint.scenario.keys;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.dish.mirror.Material;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.dish.sheet.SheetMaterial;
import simmerpoint.heat.PanMaterial;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.sun.AirType;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityTable;

/** Reads the keys from the table keys.tsv, whose head says what its columns mean, and those of a cut from the cuts. */
final class KeyTable {
    private static final String REQUIRED = "required";
    private static final Map<String, List<String>> CATALOGUES = Map.of(
            "(cuts)", Cuts.ALL.stream().map(CutKind::word).toList(),
            "(mirror materials)", mirrorMaterials(),
            "(pan finishes)",
                    FinishCatalogue.all().stream()
                            .map(row -> row.finish().name())
                            .toList(),
            "(pan materials)", PanMaterial.all().stream().map(PanMaterial::name).toList(),
            "(sheet materials)",
                    SheetMaterial.all().stream().map(SheetMaterial::name).toList(),
            "(air types)", Arrays.stream(AirType.values()).map(AirType::word).toList());

    private static final Map<String, Key.Kind> KINDS =
            Stream.of(Key.Kind.values()).collect(Collectors.toMap(Key.Kind::name, kind -> kind));

    private KeyTable() {}

    /** Every key in the order of the file. */
    static List<Key> keys() {
        List<Key> keys = new ArrayList<>();
        for (Map<String, String> row :
                QuantityTable.read(KeyTable.class, "keys.tsv").rows()) {
            keys.add(key(row));
            if (row.get("key").equals(CutKeys.CUT)) {
                Cuts.parameters().forEach(parameter -> keys.add(key(parameter)));
            }
        }
        List<Key> zones = ZoneKeys.of(keys);
        int after = keys.stream().map(Key::section).toList().indexOf("mirror");
        keys.addAll(after, zones);
        return List.copyOf(keys);
    }

    private static Key key(Map<String, String> row) {
        Key.Kind kind = kind(row.get("kind"));
        Dimension dimension = dimension(kind, row.get("kind"));
        String allowed = row.get("allowed");
        String byDefault = row.get("default");
        return new Key(
                row.get("key"),
                kind,
                dimension,
                row.get("example"),
                dimension == null ? null : new KeyRange(dimension, allowed),
                usual(dimension, row.get("usual")),
                dimension == null ? words(allowed) : List.of(),
                byDefault.equals(REQUIRED) ? null : byDefault,
                Set.copyOf(split(row.get("only for"))),
                row.get("meaning"));
    }

    /** A word of another kind, or what a number measures. */
    private static Key.Kind kind(String word) {
        return KINDS.getOrDefault(word.toUpperCase(Locale.ROOT), Key.Kind.QUANTITY);
    }

    private static Dimension dimension(Key.Kind kind, String word) {
        return switch (kind) {
            case QUANTITY -> Dimension.valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
            case COUNT -> Dimension.COUNT;
            case LATITUDE, LONGITUDE -> Dimension.ANGLE;
            default -> null;
        };
    }

    private static KeyRange usual(Dimension dimension, String words) {
        return words == null || words.isEmpty() ? null : new KeyRange(dimension, words);
    }

    private static List<String> words(String allowed) {
        return Optional.ofNullable(CATALOGUES.get(allowed)).orElseGet(() -> split(allowed));
    }

    private static List<String> split(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(", "));
    }

    private static List<String> mirrorMaterials() {
        return Stream.concat(MaterialCatalogue.all().stream().map(Material::name), Stream.of(MirrorKeys.OWN_FIGURES))
                .toList();
    }

    private static Key key(CutParameter p) {
        Key.Kind kind = kind(p.type().name());
        Dimension dimension = dimension(kind, p.type().name());
        return new Key(
                CutKeys.path(p),
                kind,
                dimension,
                p.example(),
                dimension == null ? null : new KeyRange(dimension, p.allowed()),
                usual(dimension, p.usual()),
                p.words(),
                p.defaultText(),
                Set.copyOf(wordsOfCutsWith(p)),
                p.sentence());
    }

    private static List<String> wordsOfCutsWith(CutParameter parameter) {
        return Cuts.ALL.stream()
                .filter(kind -> kind.takes(parameter))
                .map(CutKind::word)
                .toList();
    }
}

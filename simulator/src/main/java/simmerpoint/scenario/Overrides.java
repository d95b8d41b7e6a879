package simmerpoint.scenario;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import simmerpoint.units.InputText;

/** Puts values that were given beside the file (key by full path) into its nodes. */
final class Overrides {
    private static final String MATERIAL = "mirror.material";

    private Overrides() {}

    static void apply(Node.Section root, Map<String, String> overrides, Problems problems) throws ScenarioException {
        if (bringFigures(overrides, material(root))) {
            forgetFigures(root, overrides);
        }
        for (Map.Entry<String, String> override : overrides.entrySet()) {
            refuseUnknown(override.getKey(), problems);
            put(root, override.getKey(), override.getValue());
        }
    }

    /** Whether another material is chosen than {@code material}, which then brings its own figures. */
    static boolean bringFigures(Map<String, String> overrides, String material) {
        String chosen = overrides.get(MATERIAL);
        return chosen != null && !sameWord(chosen, MirrorKeys.OWN_FIGURES) && !sameWord(chosen, material);
    }

    /** Whether the key is a figure that comes with the material where the file does not give it. */
    static boolean isFigure(Key key) {
        return Key.FROM_MATERIAL.equals(key.defaultText());
    }

    private static String material(Node.Section root) {
        return mirror(root)
                .map(mirror -> mirror.entries().get("material"))
                .map(Node.Entry::node)
                .filter(Node.Scalar.class::isInstance)
                .map(node -> ((Node.Scalar) node).text())
                .orElse(MirrorKeys.DEFAULT_MATERIAL);
    }

    private static Optional<Node.Section> mirror(Node.Section root) {
        return Optional.ofNullable(root.entries().get("mirror"))
                .map(Node.Entry::node)
                .filter(Node.Section.class::isInstance)
                .map(Node.Section.class::cast);
    }

    private static boolean sameWord(String a, String b) {
        return InputText.normalised(a).equalsIgnoreCase(InputText.normalised(b));
    }

    /** The file's own figures of a mirror are those of the material they stand beside, not of another. */
    private static void forgetFigures(Node.Section root, Map<String, String> overrides) {
        mirror(root)
                .ifPresent(mirror -> mirror.entries().keySet().removeIf(name -> {
                    String path = "mirror." + name;
                    return !overrides.containsKey(path)
                            && Keys.find(path).filter(Overrides::isFigure).isPresent();
                }));
    }

    private static void refuseUnknown(String path, Problems problems) throws ScenarioException {
        Optional<String> wrong = unknown(path);
        if (wrong.isPresent()) {
            throw problems.refuse(0, InputText.shown(path), wrong.get());
        }
    }

    /** What to say of a path that is no key's; empty if it is one. */
    static Optional<String> unknown(String path) {
        if (Keys.find(path).isPresent()) {
            return Optional.empty();
        }
        String advice = Keys.isSection(path) && !path.isEmpty()
                ? "; it is a section, its keys are " + String.join(", ", Keys.namesIn(path))
                : nearest(path).map(near -> "; did you mean " + near + "?").orElse("");
        return Optional.of("this key is not known" + advice);
    }

    /** Those of a bare name, else the one whose full path is nearest, else those whose name ends it. */
    private static Optional<String> nearest(String path) {
        Optional<String> named = named(path.substring(path.lastIndexOf('.') + 1));
        return path.contains(".") ? Keys.nearest(path).or(() -> named) : named.or(() -> Keys.nearest(path));
    }

    private static Optional<String> named(String name) {
        String paths = Keys.all().stream()
                .filter(key -> key.name().equals(name))
                .map(Key::path)
                .collect(Collectors.joining(" or "));
        return paths.isEmpty() ? Optional.empty() : Optional.of(paths);
    }

    private static void put(Node.Section root, String path, String typed) {
        Node.Section section = root;
        String[] names = path.split("\\.", -1);
        for (int i = 0; i < names.length - 1; i++) {
            Node.Entry entry = section.entries().get(names[i]);
            if (entry == null || !(entry.node() instanceof Node.Section)) {
                entry = new Node.Entry(0, Node.Section.empty(0));
                section.entries().put(names[i], entry);
            }
            section = (Node.Section) entry.node();
        }
        section.entries().put(names[names.length - 1], new Node.Entry(0, new Node.Scalar(typed, 0, false)));
    }
}

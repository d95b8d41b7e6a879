package simmerpoint.viewer.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import simmerpoint.scenario.ScenarioException;

/** Scenarios that come with the program, and an empty one to begin with. */
public final class ShippedScenarios {
    /** File name and title of each but the first, which is the built-in example. */
    private static final Map<String, String> TITLES = Map.of(
            "school-yard", "School yard dish of card and foil",
            "garden-strips", "Garden dish of twenty strips",
            "lake-hut-evening", "Lake hut in the evening",
            "beekeeper-wax", "Beekeeper\u2019s wax melter",
            "triangle-dish", "Dish of plywood triangles");

    private static final List<String> NAMES =
            List.of("school-yard", "garden-strips", "lake-hut-evening", "beekeeper-wax", "triangle-dish");

    /** Other files that go with one: the mesh it names, or logs to practise with. */
    private static final Map<String, List<String>> WITH = Map.of(
            "triangle-dish", List.of("triangle-dish.obj"),
            "garden-strips",
                    List.of(
                            "garden-logs/monday.csv",
                            "garden-logs/monday-cooling.csv",
                            "garden-logs/tuesday-pan-out.csv",
                            "garden-logs/wednesday-pan-in.csv"));

    private static final String FRESH = """
            title: My cooker

            dish:
              diameter: 1.2 m
              focal-length: 72 cm
              surface: {cut: bent-strips, sectors: 24}

            mirror:
              material: aluminised polyester film

            pan: {diameter: 24 cm, height: 11 cm, water: 2 l}
            """;

    private ShippedScenarios() {}

    /** Names of all but the built-in example. */
    public static List<String> names() {
        return NAMES;
    }

    /** What one is called. */
    public static String title(String name) {
        return TITLES.get(name);
    }

    /** A usual cooker of one's own to begin with. */
    public static OpenedFile fresh() {
        try {
            return OpenedFile.ofText("a new scenario", FRESH, Path.of(""));
        } catch (ScenarioException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Reads one. Other files that go with it are copied to a folder first.
     *
     * @param folder where such files are put
     */
    public static OpenedFile open(String name, Path folder) throws ScenarioException, IOException {
        String text = new String(bytes(name + ".yaml"), StandardCharsets.UTF_8);
        for (String file : WITH.getOrDefault(name, List.of())) {
            copy(file, folder);
        }
        return OpenedFile.ofText(name + ".yaml", text, folder);
    }

    private static void copy(String file, Path folder) throws IOException {
        byte[] bytes = bytes(file);
        try {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.write(folder.resolve(file), bytes);
        } catch (IOException e) {
            throw new IOException("The folder " + folder + " cannot be written.", e);
        }
    }

    private static String path(String file) {
        return "/simmerpoint/viewer/scenarios/" + file;
    }

    private static byte[] bytes(String file) throws IOException {
        try (InputStream in = ShippedScenarios.class.getResourceAsStream(path(file))) {
            if (in == null) {
                throw new IOException(file + " is missing from the program");
            }
            return in.readAllBytes();
        }
    }
}

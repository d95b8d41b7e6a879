package simmerpoint.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;

/** OBJ files damaged, with doubled and turned faces and moved corners: refused, or traced within the laws of light. */
@Tag("fuzz")
class MeshFuzzTest {
    private static final Path FOLDER = Path.of("../scenarios");
    private static final int MOST_EDITS = 3;

    @TempDir
    Path folder;

    private int number;

    @Test
    void isRefusedOrTracedWithinTheLaws() throws IOException {
        List<String> mesh = Files.readAllLines(FOLDER.resolve("triangle-dish.obj"));
        new Fuzz<List<String>>("mesh.obj", this::check, lines -> String.join("\n", lines))
                .run(1, random -> new Fuzz.Case<>(mesh, edits(random)));
    }

    private static List<UnaryOperator<List<String>>> edits(SplittableRandom random) {
        List<UnaryOperator<List<String>>> edits = new ArrayList<>(LineEdits.some(random, MOST_EDITS));
        if (random.nextBoolean()) {
            edits.add(everyFace(random.nextInt(3), 1 + random.nextInt(20)));
        }
        if (random.nextInt(3) == 0) {
            edits.add(movedCorner(random.nextDouble(), random.nextInt(3), 600 * (random.nextDouble() - 0.5)));
        }
        return edits;
    }

    /** Every so many a face is doubled, turned over, or both. */
    private static UnaryOperator<List<String>> everyFace(int how, int step) {
        return before -> {
            List<String> after = new ArrayList<>();
            int face = 0;
            for (String line : before) {
                boolean chosen = line.startsWith("f ") && face++ % step == 0;
                if (!chosen || how != 1) {
                    after.add(line);
                }
                if (chosen && how != 0) {
                    after.add(turned(line));
                }
                if (chosen && how == 0) {
                    after.add(line);
                }
            }
            return after;
        };
    }

    private static String turned(String face) {
        List<String> words = new ArrayList<>(List.of(face.trim().split("\\s+")));
        String turned = "f";
        for (int i = words.size() - 1; i > 0; i--) {
            turned += " " + words.get(i);
        }
        return turned;
    }

    private static UnaryOperator<List<String>> movedCorner(double share, int axis, double by) {
        return before -> {
            List<String> after = new ArrayList<>(before);
            int at = (int) (share * after.size());
            String[] words = after.isEmpty() ? new String[0] : after.get(at).split("\\s+");
            if (words.length == 4 && words[0].equals("v")) {
                words[1 + axis] = String.valueOf(by);
                after.set(at, String.join(" ", words));
            }
            return after;
        };
    }

    private void check(List<String> lines) throws IOException {
        Path mesh = Files.writeString(folder.resolve(number++ + ".obj"), String.join("\n", lines));
        try {
            Map<String, String> change = Map.of("dish.surface.file", mesh.toString());
            CheckedScenario read = CheckedScenario.of(
                    ScenarioReader.values(FOLDER.resolve("triangle-dish.yaml")).with(change));
            LightLaws.trace(read.scenario());
        } catch (ScenarioException e) {
            Sentences.check(e);
        } finally {
            Files.delete(mesh);
        }
    }
}

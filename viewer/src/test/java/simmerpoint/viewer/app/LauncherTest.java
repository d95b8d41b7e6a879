package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it is started from a shell, in a Java machine of its own. */
class LauncherTest {
    private static final List<String> HEADLESS = List.of(
            "-Dglass.platform=Monocle", "-Dmonocle.platform=Headless", "-Dprism.order=sw", "-Djava.awt.headless=true");

    @TempDir
    Path folder;

    private Process start(String... arguments) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(HEADLESS);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Launcher.class.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile())
                .start();
    }

    private int run(String... arguments) throws Exception {
        Process process = start(arguments);
        assertTrue(process.waitFor(100, TimeUnit.SECONDS), "the program does not end");
        return process.exitValue();
    }

    private List<String> said(String stream) throws Exception {
        return Files.readAllLines(folder.resolve(stream), StandardCharsets.UTF_8);
    }

    @Test
    void aWrongCommandLineEndsWithTwoAndOneSentence() throws Exception {
        assertEquals(2, run("--theme", "red"));
        assertEquals(1, said("err").size(), said("err").toString());
        assertTrue(said("err").get(0).startsWith("simmerpoint-viewer: --theme: \"red\" is not a theme"));
    }

    @Test
    void aScenarioThatCannotBePaintedEndsWithTwoAndOneSentence() throws Exception {
        Files.writeString(folder.resolve("bad.yaml"), "dish: {diametr: 1 m}\n");
        assertEquals(2, run("--shot", "window.png", "bad.yaml"));
        assertEquals(1, said("err").size(), said("err").toString());
        assertTrue(said("err").get(0).contains("bad.yaml, line 1"), said("err").get(0));
        assertFalse(Files.exists(folder.resolve("window.png")));
    }

    /** The sentence is printed, and the window opens all the same: the program goes on until it is closed. */
    @Test
    void aScenarioThatCannotBeOpenedIsToldInTheWindow() throws Exception {
        Process process = start("no-such-file.yaml");
        try {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
            while (said("err").stream().noneMatch(line -> line.startsWith("simmerpoint-viewer: no-such-file.yaml"))) {
                assertTrue(
                        process.isAlive() && System.nanoTime() < end,
                        said("err").toString());
                Thread.sleep(50);
            }
            assertFalse(
                    process.waitFor(1500, TimeUnit.MILLISECONDS), said("err").toString());
        } finally {
            process.destroyForcibly().waitFor();
        }
    }

    @Test
    @Tag("slow")
    void theWindowIsPaintedToAFile() throws Exception {
        assertEquals(
                0,
                run(
                        "--shot=window.png",
                        "--size=1100x720",
                        "--theme=dark",
                        "--drawer",
                        "--keep",
                        "--change=stand.pull-back=8 cm"),
                said("err").toString());
        BufferedImage image = ImageIO.read(folder.resolve("window.png").toFile());
        assertEquals(1100, image.getWidth());
        assertEquals(720, image.getHeight());
        // In the middle of the kept design's map it is hot: the side-by-side part was waited for.
        assertTrue(hasWarmPixel(image, 440, 520, 620, 660), "there is no second design");
        assertTrue((image.getRGB(1, 719) & 0xFF) < 0x60, "dark is not dark");
    }

    /** Whether there is orange in it: colours of strong light. */
    private static boolean hasWarmPixel(BufferedImage image, int left, int top, int right, int bottom) {
        for (int x = left; x < right; x++) {
            for (int y = top; y < bottom; y++) {
                int rgb = image.getRGB(x, y);
                if ((rgb >> 16 & 0xFF) > 0xD0 && (rgb >> 8 & 0xFF) < 0xB0 && (rgb & 0xFF) < 0x80) {
                    return true;
                }
            }
        }
        return false;
    }
}

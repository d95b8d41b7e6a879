package simmerpoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lines of Java that the README shows compile and run as they stand there. */
@Tag("slow")
class ReadmeTest {
    private static final Path ROOT = Path.of("..");

    @TempDir
    Path folder;

    @Test
    void linesOfJavaRun() throws Exception {
        String readme = Files.readString(ROOT.resolve("README.md"));
        Matcher block = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL).matcher(readme);
        assertTrue(block.find(), "the README shows lines of Java");
        String lines = block.group(1).replace("scenarios/", ROOT + "/scenarios/");
        Path source = folder.resolve("Lines.java");
        Files.writeString(
                source,
                "import java.nio.file.Path;\nimport simmerpoint.scenario.*;\n"
                        + "import simmerpoint.scenario.file.*;\nimport simmerpoint.study.trace.*;\n"
                        + "import simmerpoint.study.pan.*;\nimport simmerpoint.target.*;\npublic class Lines {\n"
                        + "public static void run() throws Exception {\n" + lines + "}\n}\n");
        String classes = System.getProperty("java.class.path");
        int rc = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-cp", classes, "-d", folder.toString(), source.toString());
        assertEquals(0, rc, "the lines compile");
        String said = run();
        assertTrue(said.matches("(?s)\\d+ W .*reach the pan.*\\d+ W after pulling the pan back.*"), said);
    }

    private String run() throws Exception {
        PrintStream before = System.out;
        ByteArrayOutputStream caught = new ByteArrayOutputStream();
        try (URLClassLoader loader = new URLClassLoader(
                new URL[] {folder.toUri().toURL()}, getClass().getClassLoader())) {
            System.setOut(new PrintStream(caught, true, StandardCharsets.UTF_8));
            loader.loadClass("Lines").getMethod("run").invoke(null);
        } catch (InvocationTargetException e) {
            throw new AssertionError("the lines ran into trouble", e.getCause());
        } finally {
            System.setOut(before);
        }
        return caught.toString(StandardCharsets.UTF_8);
    }
}

package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.study.TraceStudy;

class PanCommandTest {
    private static final String FEW = "--rays=4096";

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        out.reset();
        err.reset();
        PrintStream o = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream e = new PrintStream(err, true, StandardCharsets.UTF_8);
        return new Program(new Terminal(o, e, false, false, 0), TraceStudy::run).run(args);
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.yaml"), text);
    }

    @Test
    void answersAndWritesAllFiles() throws IOException {
        Path png = folder.resolve("p.png");
        Path csv = folder.resolve("p.csv");
        Path json = folder.resolve("p.json");
        assertEquals(
                0,
                run("pan", FEW, "--png=" + png, "--csv=" + csv, "--json=" + json),
                err.toString(StandardCharsets.UTF_8));
        String text = out.toString(StandardCharsets.UTF_8);
        assertTrue(text.contains("go into the pan where it stands"), text);
        assertTrue(text.lines().allMatch(line -> line.length() <= 80), text);
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
        assertTrue(Files.readString(csv).contains("raise,"));
        assertTrue(Files.readString(json).contains("\"heat_level\""));
    }

    @Test
    void jsonMayGoToStandardOutput() {
        assertEquals(0, run("pan", FEW, "--json", "-"));
        assertTrue(out.toString(StandardCharsets.UTF_8).startsWith("{"));
    }

    @Test
    void aBareDiscIsRefusedInOneSentence() throws IOException {
        Path disc =
                file("dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nplane: {disc: 20 cm}\n");
        assertEquals(2, run("pan", disc.toString(), FEW));
        String text = err.toString(StandardCharsets.UTF_8);
        assertEquals(1, text.lines().count(), text);
        assertTrue(text.contains("only a pan can be asked for its place"), text);
    }

    @Test
    void aPanInsideTheMirrorIsRefusedInOneSentence() throws IOException {
        Path low = file(
                "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nstand: {pull-back: -79 cm}\n");
        assertEquals(2, run("pan", low.toString(), FEW), out.toString(StandardCharsets.UTF_8));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("mm into the mirror"));
    }
}

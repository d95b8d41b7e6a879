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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.study.TraceStudy;

class AimCommandTest {
    private static final String FEW = "--rays=1024";
    private static final String SMOOTH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n";

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

    private String said() {
        return out.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }

    private void complains(String words) {
        String text = err.toString(StandardCharsets.UTF_8);
        assertEquals(1, text.lines().count(), text);
        assertTrue(text.contains(words), text);
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.yaml"), text).toString();
    }

    @Test
    void answersAndWritesAllFiles() throws IOException {
        Path png = folder.resolve("a.png");
        Path csv = folder.resolve("a.csv");
        Path json = folder.resolve("a.json");
        assertEquals(
                0,
                run("aim", FEW, "--png=" + png, "--csv=" + csv, "--json=" + json),
                err.toString(StandardCharsets.UTF_8));
        assertTrue(said().contains("Aim again every"), said());
        assertTrue(said().contains("does not name place and time"), said());
        assertTrue(said().contains("Or aim ahead"), said());
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
        assertTrue(Files.readString(csv).contains("curve,drift,"));
        assertTrue(Files.readString(json).contains("\"aim_again_min\""));
    }

    @Test
    void takesLossAndStick() throws IOException {
        String disc = file(SMOOTH + "plane: {disc: 20 cm}\n");
        assertEquals(0, run("aim", disc, FEW, "--loss=5%", "--stick=1 m"), err.toString(StandardCharsets.UTF_8));
        assertTrue(said().contains("5 % of the"), said());
        assertTrue(said().contains("stick 100 cm long"), said());
        assertTrue(said().contains("the disc catches"), said());
    }

    @Test
    void knowsTheRealSun() throws IOException {
        String hut = file(SMOOTH + "place: {latitude: 53.1° N, longitude: 10.4° E, altitude: 90 m, zone: UTC+2}\n"
                + "when: {date: 2026-08-14, time: 17:50}\nsky: {kind: clear, setting: rural}\n");
        assertEquals(0, run("aim", hut, FEW), err.toString(StandardCharsets.UTF_8));
        assertTrue(said().contains("for 17:50 on 14 August 2026, when the sun goes down and to the right"), said());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0%", "100%", "-5%", "120 %", "much"})
    void refusesLossesThatAreNone(String loss) {
        assertEquals(2, run("aim", FEW, "--loss", loss));
        complains("--loss: \"" + loss + "\" is not a loss from 0.1 % to 99 %");
    }

    @Test
    void aLossWithoutPercentIsRefused() {
        assertEquals(2, run("aim", FEW, "--loss", "0.1"));
        complains("the % is missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 cm", "4 m", "-1 cm"})
    void refusesSticksThatAreNone(String stick) {
        assertEquals(2, run("aim", FEW, "--stick=" + stick));
        complains("a length from 1 cm to 3 m");
    }

    @Test
    void aTargetWithoutLightIsRefusedInOneSentence() throws IOException {
        String beside = file(SMOOTH + "plane: {disc: 10 cm}\nstand: {side: 1 m}\n");
        assertEquals(2, run("aim", beside, FEW, "--quiet"), said());
        complains("no light from the mirrors is caught even when the dish is aimed dead on");
    }

    @Test
    void aSunThatIsDownIsRefusedInOneSentence() throws IOException {
        String night = file(SMOOTH + "place: {latitude: 53.1° N, longitude: 10.4° E, altitude: 90 m, zone: UTC+2}\n"
                + "when: {date: 2026-08-14, time: 23:50}\nsky: {kind: clear, setting: rural}\n");
        assertEquals(2, run("aim", night, FEW, "--quiet"), said());
        complains("below the horizon");
    }

    @Test
    void aPanInsideTheMirrorIsRefusedInOneSentence() throws IOException {
        String low = file(SMOOTH + "stand: {pull-back: -79 cm}\n");
        assertEquals(2, run("aim", low, FEW, "--quiet"), said());
        complains("mm into the mirror");
    }
}

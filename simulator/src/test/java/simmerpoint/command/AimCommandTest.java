package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AimCommandTest extends CommandRuns {
    private static final String FEW = "--rays=1024";
    private static final String SMOOTH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n";

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("mine.yaml"), text).toString();
    }

    @Test
    void answersAndWritesAllFiles() throws IOException {
        Path png = folder.resolve("a.png");
        Path csv = folder.resolve("a.csv");
        Path json = folder.resolve("a.json");
        assertEquals(0, run("aim", "--full", FEW, "--png=" + png, "--csv=" + csv, "--json=" + json), err());
        assertTrue(said().contains("Aim again every"), said());
        assertTrue(said().contains("does not name place and time"), said());
        assertTrue(said().contains("Or aim ahead"), said());
        assertEquals(1400, ImageIO.read(png.toFile()).getWidth());
        assertTrue(Files.readString(csv).contains("curve,drift,"));
        assertTrue(Files.readString(json).contains("\"aim_again_s\""));
    }

    @Test
    void takesLossAndStick() throws IOException {
        String disc = file(SMOOTH + "plane: {disc: 20 cm}\n");
        assertEquals(0, run("aim", "--full", disc, FEW, "--loss=5%", "--stick=1 m"), err());
        assertTrue(said().contains("by then you lose 5 %"), said());
        assertTrue(said().contains("stick 100 cm long"), said());
        assertTrue(said().contains("land on the disc"), said());
    }

    @Test
    void knowsTheRealSun() throws IOException {
        String hut = file(SMOOTH + "place: {latitude: 53.1° N, longitude: 10.4° E, altitude: 90 m, zone: UTC+2}\n"
                + "when: {date: 2026-08-14, time: 17:50}\nsky: {kind: clear, setting: rural}\n");
        assertEquals(0, run("aim", "--full", hut, FEW), err());
        assertTrue(said().contains("for 17:50 on 14 August 2026, when the sun goes down and to the right"), said());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0%", "100%", "-5%", "120 %", "much"})
    void refusesLossesThatAreNone(String loss) {
        assertEquals(2, run("aim", FEW, "--loss", loss));
        assertComplaint("--loss: \"" + loss + "\" is not a loss from 0.1 % to 99 %");
    }

    @Test
    void aLossWithoutPercentIsRefused() {
        assertEquals(2, run("aim", FEW, "--loss", "0.1"));
        assertComplaint("the % is missing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 cm", "4 m", "-1 cm"})
    void refusesSticksThatAreNone(String stick) {
        assertEquals(2, run("aim", FEW, "--stick=" + stick));
        assertComplaint("a length from 1 cm to 3 m");
    }

    @Test
    void aTargetWithoutLightIsRefusedInOneSentence() throws IOException {
        String beside = file(SMOOTH + "plane: {disc: 10 cm}\nstand: {side: 1 m}\n");
        assertEquals(2, run("aim", beside, FEW, "--quiet"), said());
        assertComplaint("no light from the mirrors is caught even when the dish is aimed dead on");
    }

    @Test
    void aSunThatIsDownIsRefusedInOneSentence() throws IOException {
        String night = file(SMOOTH + "place: {latitude: 53.1° N, longitude: 10.4° E, altitude: 90 m, zone: UTC+2}\n"
                + "when: {date: 2026-08-14, time: 23:50}\nsky: {kind: clear, setting: rural}\n");
        assertEquals(2, run("aim", night, FEW, "--quiet"), said());
        assertComplaint("below the horizon");
    }

    @Test
    void aPanInsideTheMirrorIsRefusedInOneSentence() throws IOException {
        String low = file(SMOOTH + "stand: {pull-back: -79 cm}\n");
        assertEquals(2, run("aim", low, FEW, "--quiet"), said());
        assertComplaint("mm into the mirror");
    }
}

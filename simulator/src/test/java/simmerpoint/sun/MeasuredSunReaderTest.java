package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.input.InputFileException;

class MeasuredSunReaderTest {
    private static final String GOOD = "# measured at the lake hut\n\nangle_mrad, relative_radiance\n"
            + "0, 1\n2, 0.95  # a clear noon\n4.6, 3.5e-1\r\n4.7,.01\n10,0\n";

    @TempDir
    Path folder;

    @Test
    void readsAnglesAndRadiances() throws Exception {
        SunShape sun = read(GOOD);
        assertEquals(10e-3, sun.largestAngle(), 1e-15);
        assertEquals(0.95, sun.relativeRadiance(2e-3), 1e-12);
        assertEquals(0.35, sun.relativeRadiance(4.6e-3), 1e-12);
        assertEquals(0.975, sun.relativeRadiance(1e-3), 1e-12);
        assertEquals("table sun.csv, 5 rows to 10 mrad", sun.describe());
    }

    @Test
    void aByteOrderMarkIsNoMistake() throws Exception {
        assertEquals(read(GOOD), read("\uFEFF" + GOOD));
    }

    /** Each row: what line 4 says instead of the second row, and words the message must hold. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-1,0.9|'-1'|0 to 100 mrad",
                "0,0.9|'0'|more than the 0 mrad of line 3",
                "101,0.9|'101'|0 to 100 mrad",
                "NaN,0.9|'NaN'|decimal points",
                "2,NaN|'NaN'|decimal points",
                "2,-0.1|'-0.1'|0 to 1e12",
                "2,1e13|'1e13'|0 to 1e12",
                "2,1e999|'1e999'|0 to 1e12",
                "2,Infinity|'Infinity'|decimal points",
                "2,5,0,9|'2,5,0,9'|decimal points",
                "2;0.9|'2;0.9'|a comma between",
                "2,0.9f|'0.9f'|decimal points",
                "2,0x1p3|'0x1p3'|decimal points",
                "two,0.9|'two'|decimal points",
                "2|'2'|two numbers",
                "2,|''|two numbers",
                "5,0.9|line 5: found '4.6'|more than the 5 mrad of line 4"
            })
    void aBadRowIsNamed(String row, String found, String allowed) throws Exception {
        String sentence = refused("angle_mrad,radiance\n# x\n0,1\n" + row + "\n4.6,0.4\n4.7,0\n");
        assertTrue(sentence.contains(found), sentence);
        assertTrue(sentence.contains(allowed), sentence);
        assertTrue(sentence.contains(", line "), sentence);
    }

    @Test
    void theFirstRowIsTheCentre() throws Exception {
        String sentence = refused("angle_mrad,radiance\n0.1,1\n2,1\n3,1\n");
        assertTrue(sentence.contains("line 2: found '0.1'; the first row is the sun's centre"), sentence);
    }

    @Test
    void theHeaderNamesTheUnit() throws Exception {
        for (String header : new String[] {"angle_turns,radiance", "0,1", "mrad", "angle mrad;radiance", "a,mrad"}) {
            String sentence = refused(header + "\n0,1\n2,1\n3,1\n");
            assertTrue(sentence.contains("line 1: found '" + header + "'; the first line names"), sentence);
        }
    }

    /** A degree is pi/180, a minute of arc a sixtieth of it: by definition. */
    @Test
    void degreesAndMinutesOfArcAreReadToo() throws Exception {
        assertEquals(
                Math.toRadians(0.3),
                read("angle_deg,radiance\n0,1\n0.2,1\n0.3,0\n").largestAngle(),
                1e-15);
        assertEquals(
                Math.toRadians(0.25),
                read("Angle (arcmin),b\n0,1\n10,1\n15,0\n").largestAngle(),
                1e-15);
        String sentence = refused("angle_deg,radiance\n0,1\n2,1\n6,1\n");
        assertTrue(sentence.contains("an angle is 0 to 5.73 deg"), sentence);
    }

    @Test
    void threeRowsAtLeast() throws Exception {
        assertTrue(refused("angle_mrad,radiance\n0,1\n2,1\n").contains("found 2 rows; 3 or more"));
        assertTrue(refused("").contains("found 0 rows"));
    }

    @Test
    void someLightAndMostOfItInTheMiddle() throws Exception {
        assertTrue(refused("angle_mrad,radiance\n0,0\n2,0\n3,0\n").contains("no row has any light"));
        assertTrue(refused("angle_mrad,radiance\n0,0\n2,1\n3,0\n").contains("radiance at angle 0 is 0.0"));
    }

    @Test
    void filesThatAreNone() throws Exception {
        assertTrue(refusal(folder).contains("folder"));
        assertTrue(refusal(folder.resolve("none.csv")).contains("no such file"));
    }

    @Test
    void aMegabyteIsEnough() throws Exception {
        assertTrue(refused(GOOD + "#".repeat(1_000_000)).contains("at most 1 MB"));
    }

    @Test
    void rubbishIsQuotedShortAndWithoutControlCharacters() throws Exception {
        Path file = folder.resolve("rubbish.csv");
        Files.write(file, ("angle_mrad,b\n" + "\u0007\u001b[31m".repeat(50)).getBytes(StandardCharsets.UTF_8));
        String sentence = refusal(file);
        assertTrue(sentence.contains("..."), sentence);
        assertTrue(sentence.length() < 250 + file.toString().length(), sentence);
        assertFalse(sentence.chars().anyMatch(Character::isISOControl), sentence);
    }

    private MeasuredSun read(String text) throws IOException, InputFileException {
        return MeasuredSun.read(Files.writeString(folder.resolve("sun.csv"), text));
    }

    private String refused(String text) throws IOException {
        return refusal(Files.writeString(folder.resolve("sun.csv"), text));
    }

    private static String refusal(Path file) {
        String sentence = assertThrows(InputFileException.class, () -> MeasuredSun.read(file))
                .getMessage();
        assertTrue(sentence.startsWith(file.toString()) && sentence.endsWith("."), sentence);
        return sentence;
    }
}

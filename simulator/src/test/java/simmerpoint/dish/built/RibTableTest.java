package simmerpoint.dish.built;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.input.InputFileException;

/** Measured depths as typed at the bench, in every unit, and what is refused with its line. */
class RibTableTest {
    @TempDir
    Path folder;

    private RibMeasurements read(String text) throws InputFileException, IOException {
        return RibTable.read(Files.writeString(folder.resolve("ribs.csv"), text));
    }

    @ParameterizedTest
    @CsvSource({"mm, 0.001", "cm, 0.01", "m, 1", "in, 0.0254"})
    void theUnitOfTheHeadIsThatOfAllNumbers(String unit, double metres) throws Exception {
        RibMeasurements ribs = read("# measured on Sunday\nfrom_middle_" + unit
                + ",rib_1,rib_2,rib_3\n0,9.5,9.25,+9\n10, 4 ,.5,-2 # rim\n");
        assertEquals(3, ribs.ribs());
        assertEquals(List.of(0.0, 10 * metres), ribs.radii());
        assertEquals(List.of(9.5 * metres, 4 * metres), ribs.depths().get(0));
        assertEquals(List.of(9.25 * metres, 0.5 * metres), ribs.depths().get(1));
        assertEquals(List.of(9 * metres, -2 * metres), ribs.depths().get(2));
    }

    /** As a spreadsheet writes it; tabs about commas are but white space. */
    @Test
    void semicolonsPartCellsWithDecimalCommas() throws Exception {
        RibMeasurements plain = read("from_middle_mm,rib_1,rib_2,rib_3\n0,9.5,9.25,9\n100,4,3,2\n");
        RibMeasurements semicolons = read("from_middle_mm;rib_1;rib_2;rib_3\n0;9,5;9,25;9\n100;4;3;2\n");
        RibMeasurements tabs = read("from_middle_mm,\trib_1,\trib_2,\trib_3\n0,\t9.5,\t9.25,\t9\n100,\t4,\t3,\t2\n");
        assertEquals(plain.depths(), semicolons.depths());
        assertEquals(plain.depths(), tabs.depths());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from_middle,rib_1,rib_2,rib_3|0,1,1,1|ribs.csv, line 1",
                "from_middle_mm,rib_1,rib_2|0,1,1|ribs.csv, line 1",
                "from_middle_mm,rib_1,rib_3,rib_2|0,1,1,1|ribs.csv, line 1",
                "from_middle_mm,rib_1,rib_2,rib_3|0,1,1|ribs.csv, line 2",
                "from_middle_mm,rib_1,rib_2,rib_3|-1,1,1,1|ribs.csv, line 2",
                "from_middle_mm,rib_1,rib_2,rib_3|0,1,1,1.2.3|ribs.csv, line 2",
                "from_middle_mm,rib_1,rib_2,rib_3|0,1,1,one|ribs.csv, line 2"
            })
    void whatCannotBeReadIsToldWithItsLine(String head, String row, String place) {
        InputFileException e = assertThrows(InputFileException.class, () -> read(head + "\n" + row + "\n100,1,1,1\n"));
        assertTrue(e.getMessage().contains(place), e.getMessage());
    }

    @Test
    void distancesRiseFromLineToLine() {
        String head = "from_middle_mm,rib_1,rib_2,rib_3\n";
        assertThrows(InputFileException.class, () -> read(head + "50,1,1,1\n50,1,1,1\n"));
        assertThrows(InputFileException.class, () -> read(head + "50,1,1,1\n"));
    }

    @Test
    void everyRibHasADepthAtEveryDistance() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new RibMeasurements(List.of(0.1, 0.2), List.of(List.of(1.0, 1.0), List.of(1.0))));
    }
}

package simmerpoint.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.drawing.output.Paper;
import simmerpoint.report.CutFiles;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.Piece;

/** The DXF of {@code cut} in a reader of another maker: ezdxf, Debian's package python3-ezdxf. */
@Tag("pages")
class DxfReadTest {
    /** Prints units, number of closed lines and the sum of their areas on the layers that are cut, by Gauss's formula. */
    private static final String READ = """
            import ezdxf, sys
            doc = ezdxf.readfile(sys.argv[1])
            cuts = [e for e in doc.modelspace().query('POLYLINE') if not e.dxf.layer.endswith('_SHEETS')]
            area = 0
            for e in cuts:
                assert e.is_closed
                p = [(v.dxf.location.x, v.dxf.location.y) for v in e.vertices]
                area += abs(sum(a[0]*b[1] - b[0]*a[1] for a, b in zip(p, p[1:] + p[:1]))) / 2
            print(doc.header['$INSUNITS'], len(cuts), repr(area))
            """;

    @TempDir
    Path folder;

    @Test
    void everyPieceIsReadInMillimetres() throws Exception {
        CutPlan plan = CutPlan.of(ScenarioReader.builtIn(), UnitSystem.METRIC);
        Path file = folder.resolve("pieces.dxf");
        Files.write(file, CutFiles.of(plan, Paper.A4, UnitSystem.METRIC).dxf().get());
        String[] read = Python.run(READ, file, folder, "python3-ezdxf").split(" ");
        assertEquals("4", read[0], "millimetres");
        assertEquals(plan.pieces().stream().mapToInt(Piece::count).sum(), Integer.parseInt(read[1]));
        double area = plan.pieces().stream().mapToDouble(Piece::totalArea).sum() * 1e6;
        assertEquals(area, Double.parseDouble(read[2]), 1e-6 * area);
    }
}

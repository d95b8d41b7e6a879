package simmerpoint.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.report.RaysFile;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;

/** The file of reflected rays in a program of another maker: Python's standard library, which follows them to the pan itself. */
@Tag("pages")
class RaysReadTest {
    /** Prints the watts of all rays and of those that cross the disc of the underside from below, read from notes and rows. */
    private static final String READ = """
            import csv, gzip, re, sys
            with gzip.open(sys.argv[1], 'rt', encoding='utf-8') as f:
                text = f.read().splitlines()
            notes = [t for t in text if t.startswith('#')]
            pan = next(t for t in notes if t.startswith('# pan:'))
            n = [float(x) for x in re.findall(r'-?[0-9.]+(?:[eE]-?[0-9]+)?', pan)]
            middle, up, radius = n[0:3], n[3:6], n[6]
            dot = lambda a, b: sum(x * y for x, y in zip(a, b))
            reflected = underside = 0.0
            for row in csv.DictReader(t for t in text if not t.startswith('#')):
                p = [float(row[k]) for k in ('x_m', 'y_m', 'z_m')]
                d = [float(row[k]) for k in ('direction_x', 'direction_y', 'direction_z')]
                w = float(row['power_W'])
                reflected += w
                rises = dot(d, up)
                if rises > 0:
                    t = dot([m - x for m, x in zip(middle, p)], up) / rises
                    at = [x + t * y - m for x, y, m in zip(p, d, middle)]
                    if t > 0 and dot(at, at) <= radius * radius:
                        underside += w
            print(repr(reflected), repr(underside))
            """;

    @TempDir
    Path folder;

    /** All watts to the six digits of the file; those on the underside within 5 standard errors of plain sampling. */
    @Test
    void anotherProgramFindsTheSameWatts() throws Exception {
        Scenario scenario = ScenarioReader.builtIn().scenario();
        TraceOptions options = TraceOptions.defaults().withRays(1 << 16);
        Path file = folder.resolve("rays.csv.gz");
        RaysFile.write(file, scenario, options, Progress.NONE);
        String[] read = Python.run(READ, file, folder, "python3").split(" ");
        Ledger ledger = TraceStudy.run(scenario, options, Progress.NONE).ledger();
        double reflected = ledger.reflected().value();
        assertEquals(reflected, Double.parseDouble(read[0]), 1e-5 * reflected);
        double share = ledger.underside().value() / reflected;
        double allowed = 5 * reflected * Math.sqrt(share * (1 - share) / (1 << 16));
        assertEquals(ledger.underside().value(), Double.parseDouble(read[1]), allowed);
    }
}

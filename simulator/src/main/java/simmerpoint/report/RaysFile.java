package simmerpoint.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import simmerpoint.quantities.RaysTable;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.ReflectedLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** Reflected rays as a file; written as they are cast, so that any number of them fits. */
public final class RaysFile {
    /** A file of that ending is packed. */
    private static final String PACKED = ".gz";

    private RaysFile() {}

    /**
     * Writes the rays of {@code scenario}.
     *
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop; nothing is written then
     */
    public static void write(Path file, Scenario scenario, TraceOptions options, Progress progress)
            throws OutputException {
        ReflectedLight light = new ReflectedLight(scenario, options);
        boolean packed = file.toString().toLowerCase(Locale.ROOT).endsWith(PACKED);
        AtomicFile.write(file, out -> {
            if (packed) {
                GZIPOutputStream pack = new GZIPOutputStream(out);
                write(light, options.seed(), pack, progress);
                pack.finish();
            } else {
                write(light, options.seed(), out, progress);
            }
        });
    }

    private static void write(ReflectedLight light, long seed, OutputStream out, Progress progress) throws IOException {
        Writer text = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        try {
            RaysTable.write(light, seed, text, progress);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        text.flush();
    }
}

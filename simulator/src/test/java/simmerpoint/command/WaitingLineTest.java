package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.ScenarioException;

class WaitingLineTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void tellsOfWorkOfOverASecondAndIsErased() throws ScenarioException {
        assertEquals("done", work(1300, true, false));
        String said = err.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains("\rreading dish.yaml: 1 s") && said.endsWith(" \r"), said);
    }

    @Test
    void isSilentWhereTheWorkIsShortOrNobodyWatchesOrWantsIt() throws ScenarioException {
        work(0, true, false);
        work(1300, false, false);
        work(1300, true, true);
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    private String work(long millis, boolean console, boolean silent) throws ScenarioException {
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        Terminal terminal = new Terminal(InputStream.nullInputStream(), stream, stream, console, false, 0);
        return WaitingLine.during("reading dish.yaml", terminal, silent, () -> {
            long end = System.nanoTime() + millis * 1_000_000;
            while (System.nanoTime() < end) {
                Thread.onSpinWait();
            }
            return "done";
        });
    }
}

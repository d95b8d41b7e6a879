package simmerpoint.command;

import java.io.Console;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import simmerpoint.quantities.OneLine;
import simmerpoint.report.Ascii;

/**
 * Where results and messages go.
 *
 * @param in what is read where a scenario is called -
 * @param out results
 * @param err messages and progress
 * @param errIsConsole whether someone watches {@code err}, so that a line may be erased there
 * @param ascii whether {@code out} and {@code err} show nothing beyond ASCII
 * @param columns how wide the window is as far as known, or 0
 */
record Terminal(InputStream in, PrintStream out, PrintStream err, boolean errIsConsole, boolean ascii, int columns) {
    private static final String SIGNS = "\u00b1\u00b2\u2588\u258f";

    /** The terminal this program was started in. */
    static Terminal ofSystem() {
        return new Terminal(
                System.in,
                System.out,
                System.err,
                watched(),
                !charset().newEncoder().canEncode(SIGNS),
                windowColumns());
    }

    /** One line of a result. */
    void say(String line) {
        out.println(shown(line));
    }

    /** One line for whoever watches. */
    void complain(String line) {
        err.println(shown(line));
    }

    /** Nothing that came from outside, a file's name for instance, steers the terminal. */
    private String shown(String line) {
        String harmless = OneLine.harmless(line);
        return ascii ? Ascii.of(harmless) : harmless;
    }

    /** What standard output writes: newer Javas say so, older ones keep it to themselves or use the default. */
    private static Charset charset() {
        for (String key : new String[] {"stdout.encoding", "sun.stdout.encoding"}) {
            String name = System.getProperty(key);
            try {
                if (name != null) {
                    return Charset.forName(name);
                }
            } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
                return Charset.defaultCharset();
            }
        }
        return Charset.defaultCharset();
    }

    /** Linux tells where standard error leads; elsewhere it is taken to be a console if the other two are. */
    private static boolean watched() {
        Path link = Path.of("/proc/self/fd/2");
        try {
            if (Files.isSymbolicLink(link)) {
                String leadsTo = Files.readSymbolicLink(link).toString();
                return leadsTo.startsWith("/dev/pts/") || leadsTo.startsWith("/dev/tty");
            }
        } catch (IOException e) {
            return false;
        }
        return hasConsole();
    }

    /** Whether standard input and output lead to somebody who types and reads. */
    static boolean hasConsole() {
        return Optional.ofNullable(System.console()).map(Terminal::interactive).orElse(false);
    }

    /** From Java 22 on there is a console even where nobody sits, and it says so itself. */
    private static boolean interactive(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    /** Whether standard output leads into another program, as far as Linux tells. */
    static boolean outIsPipe() {
        Path link = Path.of("/proc/self/fd/1");
        try {
            return Files.isSymbolicLink(link)
                    && Files.readSymbolicLink(link).toString().startsWith("pipe:");
        } catch (IOException e) {
            return false;
        }
    }

    private static int windowColumns() {
        String columns = System.getenv("COLUMNS");
        return columns != null && columns.matches("[0-9]{2,4}") ? Integer.parseInt(columns) : 0;
    }
}

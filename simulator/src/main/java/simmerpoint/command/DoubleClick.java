package simmerpoint.command;

import java.awt.GraphicsEnvironment;
import javax.swing.JOptionPane;

/** A double click on the jar: nobody would see an answer that is printed, so a small window says what to do. */
final class DoubleClick {
    private static final String WINDOWS = "Windows";

    private static final String WHAT_TO_DO = """
            This file answers in a terminal. Open one here and type

                java -jar simmerpoint.jar

            for an example, and  java -jar simmerpoint.jar --help  for the rest.

            The window is another program, Simmerpoint, in the application folder
            or installed; or open simmerpoint-viewer.jar.""";

    private DoubleClick() {}

    /** Whether there is a screen but nobody who would read what is printed. */
    static boolean happened() {
        if (Terminal.hasConsole()) {
            return false;
        }
        String system = System.getProperty("os.name");
        // Only Windows needs to ask its processes, which every piped answer would wait for.
        String java = system.startsWith(WINDOWS)
                ? ProcessHandle.current().info().command().orElse("")
                : "";
        return startedFromDesktop(system, java, System.getenv("TERM")) && !GraphicsEnvironment.isHeadless();
    }

    /** Terminals and their pipes have TERM set; on Windows a double click runs another {@code java} than a prompt does. */
    static boolean startedFromDesktop(String system, String java, String term) {
        return system.startsWith(WINDOWS) ? java.endsWith("javaw.exe") : term == null;
    }

    static void sayWhatToDo() {
        JOptionPane.showMessageDialog(null, WHAT_TO_DO, "Simmerpoint", JOptionPane.INFORMATION_MESSAGE);
    }
}

package simmerpoint.viewer.app;

import java.util.List;
import javafx.application.Application;
import simmerpoint.quantities.OneLine;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.viewer.document.OpenedFile;

/**
 * Where the program with the window starts; no {@link Application} itself, so that one jar can hold everything. Ends with
 * 2 for a wrong command line, or a scenario that cannot be painted, and with 1 for a failure while running. The one class that prints.
 */
public final class Launcher {
    private static final int WRONG = 2;

    private Launcher() {}

    /** Opens the window, see {@link Arguments#USAGE}. */
    public static void main(String[] args) {
        int code = run(List.of(args));
        if (code != 0) {
            System.exit(code);
        }
    }

    private static int run(List<String> words) {
        try {
            Arguments arguments = Arguments.parse(words);
            if (arguments.help()) {
                Arguments.USAGE.forEach(System.out::println);
                return 0;
            }
            if (arguments.shot().isPresent()) {
                AtomicFile.check(arguments.shot().get());
                return ViewerApp.open(arguments, opened(arguments));
            }
            return openWindow(arguments);
        } catch (InvalidArgumentsException | ScenarioException | OutputException e) {
            complain(e.getMessage());
            return WRONG;
        }
    }

    private static OpenedFile opened(Arguments arguments) throws ScenarioException {
        return arguments.scenario().isPresent()
                ? OpenedFile.read(arguments.scenario().get())
                : OpenedFile.example();
    }

    /** Who waits for a window gets one: with the example in it and the complaint over it, if the file cannot be used. */
    private static int openWindow(Arguments arguments) {
        try {
            return ViewerApp.open(arguments, opened(arguments));
        } catch (ScenarioException e) {
            complain(e.getMessage());
            return ViewerApp.openExample(arguments, FileActions.notOpened(e) + ". The example lies open instead.");
        }
    }

    /** One line on standard error. */
    static void complain(String sentence) {
        System.err.println("simmerpoint-viewer: " + OneLine.of(sentence));
    }
}

package simmerpoint.command;

import simmerpoint.study.trace.TraceStudy;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /**
     * Runs the command line; without arguments it traces the example that is built in, or says what to do
     * where nobody would see the answer. Ends the Java machine with 2 for a
     * wrong command line or scenario and with 1 for a failure while running.
     */
    public static void main(String[] args) {
        if (args.length == 0 || !args[0].startsWith("-")) {
            EarlyTables.begin();
        }
        if (args.length == 0 && DoubleClick.happened()) {
            DoubleClick.sayWhatToDo();
            return;
        }
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
        int code = new Program(Terminal.ofSystem(), TraceStudy::run).run(args);
        if (code != 0) {
            System.exit(code);
        }
    }
}

package simmerpoint.viewer.dialog;

import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.workshop.CuttingException;

/**
 * Writes results to a file chosen by the user, in the background, and reports the outcome in a sentence.
 */
public final class FileExport {
    private final Dialogs dialogs;
    private final Executor background;
    private final Executor fx;
    private final Consumer<String> tell;

    /**
     * For one window.
     *
     * @param dialogs is asked for the file
     * @param background where bytes are made and written
     * @param fx where {@code tell} is called
     * @param tell gets one sentence on the outcome
     */
    public FileExport(Dialogs dialogs, Executor background, Executor fx, Consumer<String> tell) {
        this.dialogs = dialogs;
        this.background = background;
        this.fx = fx;
        this.tell = tell;
    }

    /** Asks for a file of that kind and writes into it what {@code maker} makes; nothing if none is named. */
    public void write(String question, FileKind kind, String proposedName, Callable<byte[]> maker) {
        dialogs.fileToWrite(question, kind, proposedName + "." + kind.extension())
                .ifPresent(file -> background.execute(() -> {
                    fx.execute(() -> tell.accept("Writing " + file + " \u2026"));
                    String sentence = written(file, maker);
                    fx.execute(() -> tell.accept(sentence));
                }));
    }

    private static String written(Path file, Callable<byte[]> maker) {
        try {
            AtomicFile.check(file);
            AtomicFile.write(file, maker.call());
            return "Written: " + file;
        } catch (OutputException | ScenarioException e) {
            return e.getMessage();
        } catch (ImpossibleSetupException e) {
            return "Not written: " + e.getMessage() + ".";
        } catch (CuttingException e) {
            return "Not written: " + e.getMessage();
        } catch (Exception e) {
            System.getLogger(FileExport.class.getName()).log(Level.ERROR, "a file was not written", e);
            return file + " could not be written: something went wrong inside the program ("
                    + e.getClass().getSimpleName() + ").";
        }
    }
}

package simmerpoint.viewer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileKind;

/** Answers questions as a test has set it, and remembers what was asked. */
public final class ScriptedAsks implements Dialogs {
    /** What was asked, in order. */
    public final List<String> asked = new ArrayList<>();

    /** The next file that is named. */
    public Optional<Path> file = Optional.empty();

    /** The next files that are named together. */
    public List<Path> files = List.of();

    /** The next answer. */
    public Optional<Integer> answer = Optional.empty();

    @Override
    public Optional<Path> fileToOpen(String question, FileKind kind) {
        asked.add(question);
        return file;
    }

    @Override
    public List<Path> filesToOpen(String question, FileKind kind, Path first) {
        asked.add(question);
        return files;
    }

    @Override
    public Optional<Path> folderToOpen(String question, Path first) {
        asked.add(question);
        return file;
    }

    @Override
    public Optional<Path> fileToWrite(String question, FileKind kind, String proposedName) {
        asked.add(question + ": " + proposedName);
        return file;
    }

    @Override
    public Optional<Integer> which(String heading, String text, List<String> answers) {
        asked.add(heading + " " + text);
        return answer;
    }
}

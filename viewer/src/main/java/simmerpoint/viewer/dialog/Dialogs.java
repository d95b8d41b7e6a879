package simmerpoint.viewer.dialog;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Modal questions to the user; called on the FX thread, each waits for its answer. */
public interface Dialogs {
    /** Which file to open; empty if none. */
    Optional<Path> fileToOpen(String question, FileKind kind);

    /** Which files to open; empty if none. {@code first} is the folder to look in if none was named before. */
    List<Path> filesToOpen(String question, FileKind kind, Path first);

    /** Which folder to open; empty if none. {@code first} is the folder to look in if none was named before. */
    Optional<Path> folderToOpen(String question, Path first);

    /** Which file to write, proposed under a name; empty if none. Whether an old file may go is asked there too. */
    Optional<Path> fileToWrite(String question, FileKind kind, String proposedName);

    /**
     * Which of some answers.
     *
     * @param heading one short line
     * @param text a sentence or two
     * @param answers what can be answered, the first is taken by the return key
     * @return which, counted from 0; empty if the question is waved away
     */
    Optional<Integer> which(String heading, String text, List<String> answers);
}

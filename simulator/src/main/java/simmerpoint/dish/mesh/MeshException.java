package simmerpoint.dish.mesh;

import java.nio.file.Path;

/** A mesh file cannot be used; the message is one sentence for its author. */
public final class MeshException extends Exception {
    private static final long serialVersionUID = 1;

    MeshException(Path file, String sentence) {
        super(file + ": " + sentence);
    }

    MeshException(Path file, int line, String sentence) {
        super(file + ", line " + line + ": " + sentence);
    }

    MeshException(Path file, Throwable cause) {
        super(file + ": the file cannot be read.", cause);
    }
}

package simmerpoint.viewer.app;

import java.nio.file.Path;
import java.util.function.IntConsumer;
import javafx.animation.AnimationTimer;
import javafx.scene.Node;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;
import simmerpoint.viewer.live.LiveState;

/** Writes a picture of the window to a file once all results have settled. */
final class Screenshot extends AnimationTimer {
    /** Settled frames before the picture is taken, for late layout passes. */
    private static final int FRAMES = 8;

    private final ViewerWindow window;
    private final StartupActions opening;
    private final Path file;
    private final IntConsumer end;
    private int frames;

    /** Calls {@code end} with the exit code, 0 or 1, on another thread. */
    Screenshot(ViewerWindow window, StartupActions opening, Path file, IntConsumer end) {
        this.window = window;
        this.opening = opening;
        this.file = file;
        this.end = end;
    }

    @Override
    public void handle(long now) {
        frames = atRest() ? frames + 1 : 0;
        if (frames == FRAMES / 2) {
            window.scene().snapshot(null);
        }
        if (frames == FRAMES) {
            stop();
            Thread painter = new Thread(this::write, "shot");
            painter.start();
        }
    }

    private boolean atRest() {
        LiveState state = window.live().stateProperty().get();
        if (!opening.isDone() || state == null || !state.settled()) {
            return false;
        }
        boolean studied = window.live().studiesProperty().get().shows(state.scenario());
        return state.refusal().isPresent()
                || (studied && window.beside().stateProperty().get().settled() && !working());
    }

    /** Whether something that is seen shows that it is still being worked on. */
    private boolean working() {
        return window.scene().getRoot().lookupAll(".progress-bar.thin").stream().anyMatch(Screenshot::isSeen);
    }

    private static boolean isSeen(Node node) {
        return node == null || (node.isVisible() && isSeen(node.getParent()));
    }

    private void write() {
        try {
            AtomicFile.write(file, window.picture());
            end.accept(0);
        } catch (OutputException e) {
            Launcher.complain(e.getMessage());
            end.accept(1);
        }
    }
}

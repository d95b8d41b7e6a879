package simmerpoint.viewer.app;

import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import simmerpoint.viewer.live.LiveState;

/** What the command line wants done in the window once it is open: keep the design as it came, type values. */
final class StartupActions {
    private final ViewerWindow window;
    private final Arguments arguments;
    private boolean done;

    StartupActions(ViewerWindow window, Arguments arguments) {
        this.window = window;
        this.arguments = arguments;
    }

    /** Begins; a design can only be kept when its light has been traced, so this may take a moment. */
    void begin() {
        window.workbench().drawerOpenProperty().set(arguments.drawer());
        if (!arguments.keep() || window.beside().canKeep()) {
            rest();
            return;
        }
        window.live().stateProperty().addListener(new ChangeListener<LiveState>() {
            @Override
            public void changed(ObservableValue<? extends LiveState> value, LiveState before, LiveState now) {
                boolean never = now != null && now.refusal().isPresent();
                if (never || window.beside().canKeep()) {
                    value.removeListener(this);
                    rest();
                }
            }
        });
    }

    private void rest() {
        if (arguments.keep()) {
            window.beside().keep();
        }
        if (!arguments.changes().isEmpty()) {
            window.desk().change(arguments.changes());
            if (arguments.drawer()) {
                window.editor().goTo(arguments.changes().keySet().iterator().next());
            }
        }
        done = true;
    }

    /** Whether all of it has been done. */
    boolean isDone() {
        return done;
    }
}

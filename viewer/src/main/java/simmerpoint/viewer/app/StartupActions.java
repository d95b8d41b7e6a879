package simmerpoint.viewer.app;

import javafx.beans.value.ChangeListener;
import javafx.beans.value.ObservableValue;
import simmerpoint.viewer.live.LiveState;

/** Actions of the command line once the window is open: keep the design as opened, type values, hold logs against it. */
final class StartupActions {
    private final ViewerWindow window;
    private final Arguments arguments;
    private boolean done;

    StartupActions(ViewerWindow window, Arguments arguments) {
        this.window = window;
        this.arguments = arguments;
    }

    /** Starts; a design can only be kept once it has been traced. */
    void begin() {
        window.workbench().drawerOpenProperty().set(arguments.drawer());
        window.see(arguments.view());
        if (!arguments.question().isEmpty()) {
            window.views().choose(arguments.view(), arguments.question());
        }
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
            window.document().change(arguments.changes());
            if (arguments.drawer()) {
                window.editor().goTo(arguments.changes().keySet().iterator().next());
            }
        }
        if (!arguments.logs().isEmpty()) {
            window.takeLogs(arguments.logs());
        }
        done = true;
    }

    /** Whether all actions are done. */
    boolean isDone() {
        return done;
    }
}

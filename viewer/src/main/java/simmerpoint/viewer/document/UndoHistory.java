package simmerpoint.viewer.document;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Undo history: the states of a scenario and the current position among them. */
final class UndoHistory {
    private static final int MOST = 500;

    private final List<DocumentState> states = new ArrayList<>();
    private int now;
    private boolean inGesture;
    private boolean gestureBegun;

    UndoHistory(DocumentState first) {
        states.add(first);
    }

    DocumentState now() {
        return states.get(now);
    }

    /** A new state; what was undone before is forgotten. Within a gesture all states after its first count as one. */
    void add(DocumentState state) {
        boolean replaces = inGesture && gestureBegun;
        states.subList(replaces ? now : now + 1, states.size()).clear();
        states.add(state);
        gestureBegun = true;
        if (states.size() > MOST) {
            states.remove(0);
        }
        now = states.size() - 1;
    }

    void beginGesture() {
        endGesture();
        inGesture = true;
        gestureBegun = false;
    }

    /** Ends a gesture; one that came back to where it began leaves no trace. */
    void endGesture() {
        boolean idle =
                inGesture && gestureBegun && now > 0 && states.get(now - 1).isSameAs(now());
        inGesture = false;
        gestureBegun = false;
        if (idle) {
            states.remove(now);
            now--;
        }
    }

    boolean canUndo() {
        return now > 0;
    }

    boolean canRedo() {
        return now < states.size() - 1;
    }

    void undo() {
        endGesture();
        now = Math.max(0, now - 1);
    }

    void redo() {
        endGesture();
        now = Math.min(states.size() - 1, now + 1);
    }

    /** Rewrites every state, past and undone ones too. */
    void rewrite(UnaryOperator<DocumentState> change) {
        states.replaceAll(change);
    }
}

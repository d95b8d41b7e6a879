package simmerpoint.viewer.yard;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import simmerpoint.viewer.desk.Desk;
import simmerpoint.viewer.desk.DeskState;
import simmerpoint.viewer.desk.Edit;

/** Edits of the open scenario; each gesture is undone in one step. */
public final class DeskEdits implements YardEdits {
    private final Desk desk;
    private final Set<String> touched = new LinkedHashSet<>();
    private DeskState before;

    /** To that desk. */
    public DeskEdits(Desk desk) {
        this.desk = desk;
        before = desk.state();
    }

    @Override
    public void begin() {
        touched.clear();
        before = desk.state();
        desk.beginGesture();
    }

    @Override
    public void change(Map<String, String> typed) {
        touched.addAll(typed.keySet());
        desk.change(typed);
    }

    @Override
    public void end() {
        desk.endGesture();
    }

    @Override
    public void cancel() {
        Edit back = Edit.NONE;
        for (String key : touched) {
            back = back.then(before.typed(key).map(text -> Edit.type(key, text)).orElseGet(() -> Edit.drop(key)));
        }
        desk.apply(back);
        desk.endGesture();
    }
}

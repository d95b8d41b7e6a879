package simmerpoint.viewer.yard;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import simmerpoint.viewer.document.DocumentState;
import simmerpoint.viewer.document.Edit;
import simmerpoint.viewer.document.ScenarioDocument;

/** Edits of the open scenario; each gesture is undone in one step. */
public final class DocumentEdits implements YardEdits {
    private final ScenarioDocument desk;
    private final Set<String> touched = new LinkedHashSet<>();
    private DocumentState before;

    /** To that desk. */
    public DocumentEdits(ScenarioDocument desk) {
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

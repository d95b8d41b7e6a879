package simmerpoint.viewer.yard;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import simmerpoint.viewer.document.DocumentState;
import simmerpoint.viewer.document.Edit;
import simmerpoint.viewer.document.ScenarioDocument;

/** Edits of the open scenario; each gesture is undone in one step. */
public final class DocumentEdits implements YardEdits {
    private final ScenarioDocument document;
    private final Set<String> touched = new LinkedHashSet<>();
    private DocumentState before;

    /** To that desk. */
    public DocumentEdits(ScenarioDocument document) {
        this.document = document;
        before = document.state();
    }

    @Override
    public void begin() {
        touched.clear();
        before = document.state();
        document.beginGesture();
    }

    @Override
    public void change(Map<String, String> typed) {
        touched.addAll(typed.keySet());
        document.change(typed);
    }

    @Override
    public void end() {
        document.endGesture();
    }

    @Override
    public void cancel() {
        Edit back = Edit.NONE;
        for (String key : touched) {
            back = back.then(before.typed(key).map(text -> Edit.type(key, text)).orElseGet(() -> Edit.drop(key)));
        }
        document.apply(back);
        document.endGesture();
    }
}

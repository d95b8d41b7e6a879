package simmerpoint.viewer.understand;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.ScrollPane;
import simmerpoint.answer.trace.LedgerSection;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.workspace.Workspace;

/** What becomes of the sunlight on the dish, line by line, of the newest result. */
final class LedgerPane extends ScrollPane {
    private final Workspace work;

    LedgerPane(Workspace work) {
        this.work = work;
        setId("ledger");
        getStyleClass().add("ledger-pane");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        work.live().addListener((value, before, now) -> show());
        work.units().addListener((value, before, now) -> show());
        sceneProperty().addListener((value, before, now) -> show());
        show();
    }

    /** Only while it is seen: results come many times a second during a drag. */
    private void show() {
        LiveState now = work.live().getValue();
        Optional<TraceResult> result = now == null ? Optional.empty() : now.result();
        if (getScene() != null && result.isPresent()) {
            AnswerView view = new AnswerView(
                    List.of(LedgerSection.of(result.get(), work.units().getValue())), false);
            view.getStyleClass().add("study-pane");
            setContent(view);
        }
    }
}

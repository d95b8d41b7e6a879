package simmerpoint.viewer.understand;

import javafx.scene.layout.BorderPane;
import simmerpoint.viewer.pan.PanPane;
import simmerpoint.viewer.pan.PullControl;
import simmerpoint.viewer.parts.QuestionTabs;
import simmerpoint.viewer.workspace.Workspace;
import simmerpoint.viewer.yard.PanelsPane;

/** Where the light goes and how sure that is, one question at a time. */
public final class UnderstandView extends BorderPane implements AutoCloseable {
    private final QuestionTabs tabs = new QuestionTabs("understand");
    private final PanelsPane panels;

    /** Of what is worked on; the pan is moved by {@code control}. */
    public UnderstandView(Workspace work, PullControl control) {
        setId("understand-view");
        getStyleClass().add("understand-view");
        panels = new PanelsPane(
                Workspace.scenarioOf(work.document()), work.live(), work.panels(), work.theme(), work.delivery());
        tabs.with("spot", "The spot", "Where does the light land on the pan?", () -> new PanPane(work, control))
                .with("panels", "The panels", "Which panels send their light to the pan?", () -> panels);
        tabs.choose("spot");
        setCenter(tabs);
    }

    /** Its questions. */
    public QuestionTabs tabs() {
        return tabs;
    }

    @Override
    public void close() {
        panels.close();
    }
}

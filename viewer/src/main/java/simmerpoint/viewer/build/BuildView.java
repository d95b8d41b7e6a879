package simmerpoint.viewer.build;

import javafx.scene.layout.BorderPane;
import simmerpoint.viewer.comparison.ComparisonModel;
import simmerpoint.viewer.comparison.ComparisonPane;
import simmerpoint.viewer.comparison.KeepButton;
import simmerpoint.viewer.parts.QuestionTabs;
import simmerpoint.viewer.workspace.Workspace;

/** What a builder asks of a design, one question at a time. */
public final class BuildView extends BorderPane implements AutoCloseable {
    private final QuestionTabs tabs = new QuestionTabs("build");

    /** Of what is worked on. */
    public BuildView(Workspace work, ComparisonModel beside) {
        setId("build-view");
        getStyleClass().add("build-view");
        tabs.with(
                        "compare",
                        "Compare",
                        "Which of the designs that you kept is better?",
                        () -> new ComparisonPane(beside, work.units(), work.theme(), work.export()))
                .beside(new KeepButton(beside, work.live()));
        tabs.choose("compare");
        setCenter(tabs);
    }

    /** Its questions. */
    public QuestionTabs tabs() {
        return tabs;
    }

    @Override
    public void close() {
        // Nothing runs yet.
    }
}

package simmerpoint.viewer.cook;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import simmerpoint.viewer.workspace.Workspace;

/** What concerns time: when to aim again, place, day and hour, the year. */
public final class TimePane extends ScrollPane implements AutoCloseable {
    private final DayPane day;

    /** Of what is worked on. */
    public TimePane(Workspace work) {
        day = new DayPane(work);
        setId("time-pane");
        getStyleClass().add("time-pane");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setMinSize(0, 0);
        VBox cards = new VBox(new CountdownPane(work), day);
        cards.getStyleClass().add("cards");
        setContent(cards);
    }

    @Override
    public void close() {
        day.close();
    }
}

package simmerpoint.viewer.editing;

import java.time.LocalDate;
import java.time.ZoneId;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.document.ScenarioDocument;

/** Where the sun comes from: a place, day and hour, or a height and a strength that are typed. */
public final class DaylightChoice {
    private final ScenarioDocument document;
    private final ChoiceEdits choosing;

    /** In a document. */
    public DaylightChoice(ScenarioDocument document, Dialogs dialogs) {
        this.document = document;
        choosing = new ChoiceEdits(document, dialogs);
    }

    /** Whether place, day and hour say where the sun stands. */
    public boolean isDay() {
        return document.state().hasSection("when");
    }

    /** Takes the sun of a place and of today at noon, at first a usual place. */
    public void takeDay() {
        choosing.takeDay(LocalDate.now(ZoneId.systemDefault()));
    }

    /** Takes a sun that stands as typed, at first where it stands now. */
    public void takeGivenSun() {
        choosing.takeGivenSun();
    }
}

package simmerpoint.viewer.understand;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import simmerpoint.answer.safety.SafetyAnswer;
import simmerpoint.report.ResultFiles;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.light.LightChoice;
import simmerpoint.viewer.light.LightFound;
import simmerpoint.viewer.light.LightPane;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.parts.StudyPane;
import simmerpoint.viewer.workspace.Workspace;

/** What the light can burn and how far away, with a picture of it; asked by a button, since it takes some seconds. */
final class BurnPage implements AutoCloseable {
    private final Workspace work;
    private final LightChoice choice;
    private final OnDemandStudy<Found> study;

    /** The answer, and its light to look at. */
    private record Found(SafetyResult result, LightFound light) {}

    BurnPage(Workspace work, LightChoice choice, long pauseMillis) {
        this.work = work;
        this.choice = choice;
        study = new OnDemandStudy<>("safety", pauseMillis, work.delivery(), (read, progress) -> {
            read.atOneMoment();
            SafetyResult result = SafetyStudy.run(read, true, work.asked().withRays(SafetyStudy.USUAL_RAYS), progress);
            return new Found(result, LightFound.of(result.light()));
        });
    }

    Node pane() {
        return new StudyPane<>("burns", "What the light can burn or light, and how far away.", work, study, this::page)
                .takenAway("safety", (found, units) -> ResultFiles.of(found.result(), units));
    }

    private Node page(Found found, UnitSystem units) {
        return new VBox(
                10,
                new LightPane(found.light(), choice, units, work.theme().getValue()),
                new AnswerView(SafetyAnswer.of(found.result(), units).sections(), true));
    }

    @Override
    public void close() {
        study.close();
    }
}

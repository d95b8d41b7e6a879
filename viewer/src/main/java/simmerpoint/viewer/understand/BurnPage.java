package simmerpoint.viewer.understand;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import simmerpoint.answer.safety.SafetyAnswer;
import simmerpoint.drawing.cooker.FieldDrawing;
import simmerpoint.report.ResultFiles;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.parts.DrawingView;
import simmerpoint.viewer.parts.StudyPane;
import simmerpoint.viewer.workspace.Workspace;

/** What the light can burn and how far away, with a picture of it; asked by a button, since it takes some seconds. */
final class BurnPage implements AutoCloseable {
    private static final double WIDEST = 900;

    private final Workspace work;
    private final OnDemandStudy<SafetyResult> study;

    BurnPage(Workspace work, long pauseMillis) {
        this.work = work;
        study = new OnDemandStudy<>("safety", pauseMillis, work.delivery(), (read, progress) -> {
            read.atOneMoment();
            return SafetyStudy.run(read, true, work.asked().withRays(SafetyStudy.USUAL_RAYS), progress);
        });
    }

    Node pane() {
        return new StudyPane<>("burns", "What the light can burn or light, and how far away.", work, study, this::page)
                .takenAway("safety", ResultFiles::of);
    }

    private Node page(SafetyResult result, UnitSystem units) {
        DrawingView view = DrawingView.of(
                        "burns-light",
                        "The light around the focus with the pan taken away, by what it can do",
                        FieldDrawing.of(result.taken(), result.people(), units),
                        work.theme().getValue())
                .widest(WIDEST);
        return new VBox(10, view, new AnswerView(SafetyAnswer.of(result, units).sections(), true));
    }

    @Override
    public void close() {
        study.close();
    }
}

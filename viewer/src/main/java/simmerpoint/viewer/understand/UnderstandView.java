package simmerpoint.viewer.understand;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Stack;
import simmerpoint.drawing.chart.AimCharts;
import simmerpoint.drawing.chart.AimMaps;
import simmerpoint.report.ResultFiles;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.light.LightChoice;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.pan.PanPane;
import simmerpoint.viewer.pan.PullControl;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.parts.DrawingView;
import simmerpoint.viewer.parts.QuestionTabs;
import simmerpoint.viewer.parts.StudyPane;
import simmerpoint.viewer.workspace.Workspace;
import simmerpoint.viewer.yard.PanelsPane;

/** Where the light goes and how sure that is, one question at a time. */
public final class UnderstandView extends BorderPane implements AutoCloseable {
    private static final long PAUSE_MILLIS = 250;

    private final Workspace work;
    private final QuestionTabs tabs = new QuestionTabs("understand");
    private final PanelsPane panels;
    private final OnDemandStudy<LikelyResult> doubt;
    private final OnDemandStudy<AimResult> aim;
    private final BurnPage burns;
    private final TrialPage trial;

    /**
     * Of what is worked on.
     *
     * @param work what that is
     * @param control moves the pan
     * @param light says what is seen of the light
     * @param openBuilt opens the scenario of a cooker as built
     */
    public UnderstandView(
            Workspace work, PullControl control, LightChoice light, Consumer<LogsResult.Built> openBuilt) {
        this.work = work;
        setId("understand-view");
        getStyleClass().add("understand-view");
        panels = new PanelsPane(
                Workspace.scenarioOf(work.document()), work.live(), work.panels(), work.theme(), work.delivery());
        doubt = new OnDemandStudy<>(
                "doubts",
                PAUSE_MILLIS,
                work.delivery(),
                (read, progress) -> LikelyStudy.run(read, LikelyStudy.FOR_SHARES, work.asked(), progress));
        aim = new OnDemandStudy<>(
                "aiming",
                PAUSE_MILLIS,
                work.delivery(),
                (read, progress) -> AimStudy.run(read.atOneMoment(), AimPlan.USUAL, work.asked(), progress));
        burns = new BurnPage(work, light, PAUSE_MILLIS);
        trial = new TrialPage(work, openBuilt, PAUSE_MILLIS);
        tabs.with("spot", "The spot", "Where does the light land on the pan?", () -> new PanPane(work, control))
                .with("panels", "The panels", "Which panels send their light to the pan?", () -> panels)
                .with(
                        "ledger",
                        "Where the sun goes",
                        "What becomes of the sunlight on the dish?",
                        () -> new LedgerPane(work))
                .with("doubt", "How sure", "Where does the doubt come from?", this::doubt)
                .with("aim", "Aiming", "How exactly must I aim, and how often?", this::aim)
                .with("burns", "What it burns", "What can it set alight or blind?", burns::pane)
                .with(
                        "trial",
                        "How good is mine",
                        "How good is the dish that I have built, and what is wrong with it?",
                        trial::pane);
        tabs.choose("spot");
        setCenter(tabs);
    }

    private Node doubt() {
        return new StudyPane<>(
                        "doubt",
                        "Where the doubt comes from, the largest cause first.",
                        work,
                        doubt,
                        (result, units) -> new AnswerView(List.of(LikelyWords.section(result, units)), false))
                .automatic();
    }

    private Node aim() {
        return new StudyPane<>("aim", "How exactly to aim, and how often.", work, aim, this::aimPage)
                .takenAway("aim", ResultFiles::of)
                .automatic();
    }

    private Node aimPage(AimResult result, UnitSystem units) {
        Drawing maps = AimMaps.of(result);
        AimCharts charts = new AimCharts(result);
        Drawing both = new Stack(maps).gap(14).with(charts.minutes());
        DrawingView view = DrawingView.of(
                        "aim-maps",
                        "Watts by how far the sun has drifted and the dish is turned",
                        both,
                        work.theme().getValue())
                .widest(900);
        return new VBox(
                10, view, new AnswerView(AimAnswer.withoutHint(result, units).sections(), true));
    }

    /** Takes logs of one cooker, or the folder of a class, and shows what they say. */
    public void takeLogs(List<Path> files) {
        tabs.choose("trial");
        trial.take(files);
    }

    /** Its questions. */
    public QuestionTabs tabs() {
        return tabs;
    }

    @Override
    public void close() {
        panels.close();
        doubt.close();
        aim.close();
        burns.close();
        trial.close();
    }
}

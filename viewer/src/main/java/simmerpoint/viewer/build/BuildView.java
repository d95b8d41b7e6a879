package simmerpoint.viewer.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import simmerpoint.answer.cut.CutAnswer;
import simmerpoint.drawing.output.Paper;
import simmerpoint.report.CutFiles;
import simmerpoint.report.ResultFiles;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.BudgetStudy;
import simmerpoint.study.design.DesignGoal;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DesignStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.comparison.CompareAll;
import simmerpoint.viewer.comparison.ComparisonModel;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.dialog.TakeAwayMenu;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.parts.QuestionTabs;
import simmerpoint.viewer.parts.StudyPane;
import simmerpoint.viewer.workspace.Workspace;
import simmerpoint.workshop.BuildCost;
import simmerpoint.workshop.BuildableDishes;
import simmerpoint.workshop.CookerStudy;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.CuttingException;
import simmerpoint.workshop.CuttingStock;
import simmerpoint.workshop.DishCosts;
import simmerpoint.workshop.UsualStock;

/** What a builder asks of a design, one question at a time. */
public final class BuildView extends BorderPane implements AutoCloseable {
    private static final long PAUSE_MILLIS = 250;

    private final Workspace work;
    private final ComparisonModel beside;
    private final QuestionTabs tabs = new QuestionTabs("build");
    private final List<AutoCloseable> running = new ArrayList<>();

    /** Of what is worked on. */
    public BuildView(Workspace work, ComparisonModel beside) {
        this.work = work;
        this.beside = beside;
        setId("build-view");
        getStyleClass().add("build-view");
        getStylesheets().add(BuildView.class.getResource("build.css").toExternalForm());
        tabs.with("cut", "What to cut", "Every piece, to scale, and where it belongs", this::cut)
                .with("mend", "What to mend", "What mending each flaw brings, the most rewarding first", this::mend)
                .with("search", "Find a dish", "Which dish does what I want?", this::search)
                .with("compare", "Compare", "Which of the designs that I kept is better?", this::compare)
                .with("cost", "Cost", "What it costs, and each watt of it", this::cost);
        tabs.choose("cut");
        setCenter(tabs);
    }

    private <R> OnDemandStudy<R> study(String name, OnDemandStudy.Work<R> what) {
        OnDemandStudy<R> study = new OnDemandStudy<>(name, PAUSE_MILLIS, work.delivery(), what);
        running.add(study);
        return study;
    }

    private Node cut() {
        OnDemandStudy<CutPlan> study = inUnits(study(
                "cut plan",
                (read, progress) -> CookerStudy.cut(read, work.units().getValue(), work.asked(), progress)));
        StudyPane<CutPlan> pane = new StudyPane<>("cut", "Every piece, to scale.", work, study, this::cutPage);
        return pane.filling().automatic().takenAway(menu -> cutMenu(menu, pane));
    }

    /** Sizes of sheets are others in other units. */
    private <R> OnDemandStudy<R> inUnits(OnDemandStudy<R> study) {
        work.units().addListener((value, before, now) -> study.forget());
        return study;
    }

    private Node cutPage(CutPlan plan, UnitSystem units) {
        return new CutBoard(
                plan,
                units,
                work.theme().getValue(),
                new AnswerView(CutAnswer.of(plan, units).sections(), true));
    }

    private void cutMenu(TakeAwayMenu menu, StudyPane<CutPlan> pane) {
        addCut(menu, pane, "Patterns to print, at full size", new FileKind("Patterns", "pdf"), files -> files.pdf());
        addCut(menu, pane, "Sheets for a cutter", new FileKind("Drawing", "svg"), files -> files.svg());
        addCut(menu, pane, "Sheets for a cutter", new FileKind("Drawing", "dxf"), files -> files.dxf());
        menu.add(
                "List of pieces",
                FileKind.TABLE,
                "pieces",
                () -> pane.current()
                        .map(plan -> () -> ResultFiles.of(plan, work.units().getValue())));
    }

    private void addCut(
            TakeAwayMenu menu,
            StudyPane<CutPlan> pane,
            String words,
            FileKind kind,
            Function<CutFiles, Supplier<byte[]>> file) {
        menu.addBytes(words, kind, "patterns", () -> {
            UnitSystem units = work.units().getValue();
            return pane.current()
                    .map(plan -> () -> file.apply(CutFiles.of(plan, Paper.usual(units), units))
                            .get());
        });
    }

    private Node mend() {
        OnDemandStudy<BudgetResult> study = study(
                "flaws",
                (read, progress) ->
                        BudgetStudy.run(read.atOneMoment(), work.asked().withPrecision(0), progress));
        return new StudyPane<>(
                        "mend",
                        "What mending each flaw brings.",
                        work,
                        study,
                        (result, units) -> MendPage.of(new MendList(result, units)))
                .takenAway("flaws", ResultFiles::of)
                .automatic();
    }

    private Node search() {
        DesignWish wish = new DesignWish();
        OnDemandStudy<DesignResult> study = study("design", (read, progress) -> find(read, wish, progress));
        wish.wishProperty().addListener((value, before, now) -> study.forget());
        return new StudyPane<>(
                        "search",
                        "A search tries some thousand dishes around this one and takes about half a minute.",
                        work,
                        study,
                        (result, units) -> DesignPage.of(
                                result,
                                units,
                                work.theme().getValue(),
                                dish -> work.document().change(dish.keys())))
                .takenAway("dishes", ResultFiles::of)
                .asked(wish.nodes());
    }

    private DesignResult find(CheckedScenario read, DesignWish wish, Progress progress) throws ScenarioException {
        Scenario scenario = read.atOneMoment();
        DesignWish.Wish wanted = wish.wishProperty().get();
        double watts = wanted.level().isPresent()
                ? DesignStudy.wattsFor(wanted.level().get(), scenario, work.asked(), progress)
                : wanted.watts();
        CuttingStock stock =
                CuttingStock.of(UsualStock.in(read.values(), work.units().getValue()));
        DesignLimits limits = DesignLimits.around(scenario)
                .withCost(DishCosts.of(stock, Double.POSITIVE_INFINITY))
                .withBuildable(BuildableDishes.of(stock));
        return DesignStudy.run(read, new DesignGoal(watts, wanted.level()), limits, work.asked(), progress);
    }

    private Node compare() {
        CompareAll all = new CompareAll(work, beside);
        running.add(all);
        return all;
    }

    private Node cost() {
        OnDemandStudy<Optional<BuildCost>> study = inUnits(study("cost", this::cost));
        return CostPage.beside(
                CostPage.prices(work),
                new StudyPane<>("cost", "What it costs.", work, study, (cost, units) -> CostPage.of(cost, work))
                        .automatic());
    }

    /** A dish that cannot be cut says so; one without prices has no cost. */
    private Optional<BuildCost> cost(CheckedScenario read, Progress progress) throws CuttingException {
        UnitSystem units = work.units().getValue();
        CutPlan.of(read, units);
        return BuildCost.of(read, units);
    }

    /** Its questions. */
    public QuestionTabs tabs() {
        return tabs;
    }

    @Override
    public void close() {
        for (AutoCloseable each : running) {
            try {
                each.close();
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
    }
}

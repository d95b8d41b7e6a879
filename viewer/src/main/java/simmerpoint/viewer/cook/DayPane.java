package simmerpoint.viewer.cook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.chart.YearChart;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.day.DayInterval;
import simmerpoint.study.day.DayPlan;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.DayStudy;
import simmerpoint.study.day.YearResult;
import simmerpoint.study.day.YearStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.viewer.editing.DaylightChoice;
import simmerpoint.viewer.editing.KeyList;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.live.StudyRun;
import simmerpoint.viewer.parts.DrawingView;
import simmerpoint.viewer.workspace.Workspace;

/** Where and when: place, date and hour, the day's strip, and the year. */
final class DayPane extends VBox implements AutoCloseable {
    private static final long PAUSE_MILLIS = 400;
    private static final List<String> PLACE =
            List.of("place.latitude", "place.longitude", "place.zone", "when.date", "when.time");
    private static final List<String> SUN = List.of("sun.elevation", "sun.beam");

    private final Workspace work;
    private final DaylightChoice daylight;
    private final OnDemandStudy<DayResult> day;
    private final OnDemandStudy<YearResult> year;
    private final DayStrip strip;
    private final Label words = label("day-words", "day-words");
    private final ProgressBar progress = new ProgressBar(0);
    private final Button askYear = new Button();
    private final VBox yearPlace = new VBox();
    private final Node place;
    private final Node sun;
    private final Button other = new Button();

    DayPane(Workspace work) {
        this.work = work;
        daylight = new DaylightChoice(work.document(), work.dialogs());
        day = new OnDemandStudy<>("day", PAUSE_MILLIS, work.delivery(), this::dayOf);
        year = new OnDemandStudy<>("year", 0, work.delivery(), this::yearOf);
        strip = new DayStrip(work.document());
        setId("day");
        getStyleClass().add("card");
        place = keys(PLACE, "day-place");
        sun = keys(SUN, "day-sun");
        Label heading = new Label("Where and when");
        heading.getStyleClass().add("card-heading");
        other.setId("day-other");
        other.setTooltip(new Tooltip("Change between the sun of a place and day, and a sun that is typed"));
        other.setOnAction(e -> {
            if (daylight.isDay()) {
                daylight.takeGivenSun();
            } else {
                daylight.takeDay();
            }
        });
        progress.getStyleClass().add("thin");
        progress.setId("day-progress");
        progress.setMaxWidth(Double.MAX_VALUE);
        askYear.setId("day-year");
        askYear.setTooltip(new Tooltip("The 21st of every month, hour by hour; takes some ten seconds"));
        askYear.setOnAction(e -> {
            if (year.stateProperty().get().working()) {
                year.stop();
            } else {
                year.start(read());
            }
        });
        getChildren().addAll(heading, strip, progress, words, place, sun, buttons(other, askYear), yearPlace);
        day.stateProperty().addListener((value, before, now) -> show());
        year.stateProperty().addListener((value, before, now) -> showYear());
        work.document().readProperty().addListener((value, before, now) -> follow());
        work.live().addListener((value, before, now) -> settled(now));
        work.theme().addListener((value, before, now) -> {
            strip.applyTheme(now);
            showYear();
        });
        strip.applyTheme(work.theme().getValue());
        sceneProperty().addListener((value, before, now) -> follow());
        follow();
    }

    private static Node buttons(Button... all) {
        FlowPane row = new FlowPane(8, 6, all);
        for (Button button : all) {
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        return row;
    }

    private static Label label(String id, String style) {
        Label label = new Label();
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    private Node keys(List<String> paths, String id) {
        KeyList list = new KeyList(work.document(), work.units(), work.dialogs(), paths).brief();
        list.setId(id);
        list.managedProperty().bind(list.visibleProperty());
        return list;
    }

    private CheckedScenario read() {
        return work.document().readProperty().get();
    }

    private DayResult dayOf(CheckedScenario read, Progress progress) {
        Scenario scenario = read.scenario();
        SiteConditions site = scenario.site().orElseThrow();
        return DayStudy.run(
                scenario,
                DayPlan.hourly(site.when().toLocalDate()),
                work.asked().withPrecision(0).withRays(YearStudy.DEFAULT_RAYS),
                progress);
    }

    private YearResult yearOf(CheckedScenario read, Progress progress) {
        int number = read.scenario().site().orElseThrow().when().getYear();
        return YearStudy.run(
                read.scenario(), number, work.asked().withPrecision(0).withRays(YearStudy.DEFAULT_RAYS), progress);
    }

    private static boolean hasDay(CheckedScenario read) {
        return read.scenario().site().isPresent() && read.scenario().cooking().isPresent();
    }

    /** A day differs from another only by what the hour does not change, so that setting the hour asks for nothing new. */
    private boolean sameDay(DayResult known) {
        Scenario now = read().scenario();
        return now.site().isPresent()
                && known.plan().date().equals(now.site().get().when().toLocalDate())
                && known.scenario().dish().equals(now.dish())
                && known.scenario().mirror().equals(now.mirror())
                && known.scenario().workmanship().equals(now.workmanship())
                && known.scenario().shape().equals(now.shape())
                && known.scenario().target().equals(now.target())
                && known.scenario().stand().equals(now.stand())
                && known.scenario().aim().equals(now.aim())
                && known.scenario().cooking().equals(now.cooking())
                && known.scenario()
                        .site()
                        .map(SiteConditions::place)
                        .equals(now.site().map(SiteConditions::place))
                && known.scenario()
                        .site()
                        .map(SiteConditions::sky)
                        .equals(now.site().map(SiteConditions::sky));
    }

    private boolean known() {
        return day.stateProperty().get().result().filter(this::sameDay).isPresent();
    }

    /** A day is traced once the answer itself is there. */
    private void settled(LiveState now) {
        if (getScene() != null
                && now != null
                && now.settled()
                && now.refusal().isEmpty()
                && hasDay(read())
                && !known()) {
            day.start(read());
        }
    }

    private void follow() {
        StudyRun<DayResult> now = day.stateProperty().get();
        if (getScene() == null || (now.working() && !now.isOf(read()))) {
            day.stop();
        }
        if (year.stateProperty().get().working()
                && (getScene() == null || !year.stateProperty().get().isOf(read()))) {
            year.stop();
        }
        settled(work.live().getValue());
        show();
        showYear();
    }

    private void show() {
        StudyRun<DayResult> now = day.stateProperty().get();
        boolean has = hasDay(read());
        strip.setVisible(has);
        strip.setManaged(has);
        progress.setVisible(has && now.working());
        progress.setProgress(now.done());
        strip.show(now.result(), !known());
        words.setText(words(now, has));
        place.setVisible(daylight.isDay());
        sun.setVisible(!daylight.isDay());
        other.setText(daylight.isDay() ? "Type the sun instead" : "Use a place and day");
        askYear.setVisible(has);
        askYear.setManaged(has);
    }

    private String words(StudyRun<DayResult> now, boolean has) {
        if (!has) {
            return "The sun is as typed. Say where and when you cook to see the whole day.";
        }
        if (now.refusal().isPresent()) {
            return now.refusal().get();
        }
        if (!known() || now.result().isEmpty()) {
            return now.working() ? "The day is being worked out\u2026" : "";
        }
        List<DayInterval> times = now.result().get().intervals(LikelyRange::likely);
        if (now.result().get().isGrounded()) {
            return "The dish touches the ground whenever it would simmer on this day.";
        }
        if (times.isEmpty()) {
            return "Under a clear sky it never simmers on this day.";
        }
        String spans = times.stream()
                .map(t -> clock(t.from()) + " to " + clock(t.to()))
                .collect(Collectors.joining(", "));
        double hours = now.result().get().cookingHours().likely();
        return "Under a clear sky it simmers or boils from " + spans + ", " + FigureFormat.fixed(hours, 1)
                + FigureFormat.NBSP + "hours."
                + (now.result().get().touching().isEmpty()
                        ? ""
                        : " Hours in which the dish touches the ground are not counted.");
    }

    private static String clock(java.time.ZonedDateTime time) {
        return String.format(java.util.Locale.ROOT, "%02d:%02d", time.getHour(), time.getMinute() / 5 * 5);
    }

    private void showYear() {
        StudyRun<YearResult> now = year.stateProperty().get();
        askYear.setText(now.working() ? "Stop (" + Math.round(100 * now.done()) + "\u00a0%)" : "The whole year");
        Optional<YearResult> result = now.result().filter(r -> now.hasResultOf(read()));
        yearPlace
                .getChildren()
                .setAll(result.<List<Node>>map(r -> List.of(DrawingView.of(
                                "year-chart",
                                "Heat levels of the year, month by hour",
                                new YearChart(r),
                                work.theme().getValue())))
                        .orElse(List.of()));
    }

    @Override
    public void close() {
        day.close();
        year.close();
    }
}

package simmerpoint.viewer.app;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.Tooltip;
import simmerpoint.answer.TraceAnswer;
import simmerpoint.report.AimCsv;
import simmerpoint.report.AimJson;
import simmerpoint.report.AimPicture;
import simmerpoint.report.CookerReport;
import simmerpoint.report.CsvReport;
import simmerpoint.report.JsonReport;
import simmerpoint.report.PngReport;
import simmerpoint.report.TextReport;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.study.FullStudy;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.asking.FileKind;
import simmerpoint.viewer.asking.TakeAway;
import simmerpoint.viewer.desk.Desk;
import simmerpoint.viewer.live.Live;
import simmerpoint.viewer.live.LiveState;

/** Everything about the answer that can be taken away as a file; what the command line writes, by the same code. */
final class TakeAwayMenu extends MenuButton {
    private static final int COLUMNS = 80;
    private static final FileKind TEXT = new FileKind("Text", "txt");

    private final Live live;
    private final Desk desk;
    private final Look look;
    private final TakeAway takeAway;

    TakeAwayMenu(Live live, Desk desk, Look look, TakeAway takeAway, Supplier<byte[]> window) {
        super("Take away");
        this.live = live;
        this.desk = desk;
        this.look = look;
        this.takeAway = takeAway;
        setId("take-away");
        setTooltip(new Tooltip("Answers, tables and pictures as files"));
        answers();
        aiming();
        getItems().add(new SeparatorMenuItem());
        item("Everything as a page to send to a friend\u2026", this::writePage);
        item(
                "This window as a picture\u2026",
                () -> takeAway.write("Write this window", FileKind.PICTURE, "window", window::get));
        setOnShowing(e -> getItems()
                .forEach(entry -> entry.setDisable(entry.getUserData() instanceof Supplier<?> there
                        && there.get().equals(Optional.empty()))));
    }

    private MenuItem item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(e -> action.run());
        getItems().add(item);
        return item;
    }

    private void answers() {
        answer("The answer in words\u2026", TEXT, "answer", TakeAwayMenu::text);
        answer("The answer as figures\u2026", FileKind.FIGURES, "figures", (r, units) -> JsonReport.bytes(r));
        answer("Light on the pan as a table\u2026", FileKind.TABLE, "light", (r, units) -> CsvReport.bytes(r));
        answer("Light on the pan as a picture\u2026", FileKind.PICTURE, "light", PngReport::bytes);
    }

    private void aiming() {
        aim("How to aim as figures\u2026", FileKind.FIGURES, (r, units) -> AimJson.bytes(r));
        aim("How to aim as a table\u2026", FileKind.TABLE, (r, units) -> AimCsv.bytes(r));
        aim("How to aim as a picture\u2026", FileKind.PICTURE, AimPicture::bytes);
    }

    /** Makes a file's bytes. */
    private interface Maker<R> {
        byte[] bytes(R result, UnitSystem units);
    }

    private void answer(String words, FileKind kind, String name, Maker<TraceResult> maker) {
        entry(words, kind, name, this::settled, maker);
    }

    private void aim(String words, FileKind kind, Maker<AimResult> maker) {
        entry(words, kind, "aim", this::aimed, maker);
    }

    /** An entry that is there to press once {@code source} has something. */
    private <R> void entry(String words, FileKind kind, String name, Supplier<Optional<R>> source, Maker<R> maker) {
        MenuItem item = item(
                words,
                () -> source.get().ifPresent(result -> {
                    UnitSystem units = look.unitsProperty().get();
                    takeAway.write(words.replace("\u2026", ""), kind, name, () -> maker.bytes(result, units));
                }));
        item.setUserData(source);
    }

    private static byte[] text(TraceResult result, UnitSystem units) {
        String lines = String.join("\n", TextReport.lines(TraceAnswer.of(result, units), COLUMNS, false));
        return (lines + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Only a finished answer leaves the window. */
    private Optional<TraceResult> settled() {
        LiveState now = live.stateProperty().get();
        return now != null && now.settled() && now.current() ? now.result() : Optional.empty();
    }

    private Optional<AimResult> aimed() {
        LiveState now = live.stateProperty().get();
        return now == null ? Optional.empty() : live.studiesProperty().get().aimOf(now.scenario());
    }

    private void writePage() {
        ReadScenario read = desk.readProperty().get();
        String name = desk.fileProperty()
                .get()
                .map(file -> file.getFileName().toString())
                .orElse("scenario.yaml");
        UnitSystem units = look.unitsProperty().get();
        takeAway.write("Write a page", FileKind.PAGE, name.replaceFirst("\\.ya?ml$", ""), () -> {
            FullStudy.Result all = FullStudy.run(read.atOneMoment(), TraceOptions.defaults(), Progress.NONE);
            return CookerReport.bytes(read, all, name, units);
        });
    }
}

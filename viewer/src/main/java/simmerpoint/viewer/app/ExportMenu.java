package simmerpoint.viewer.app;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import simmerpoint.answer.TraceAnswer;
import simmerpoint.report.CookerReport;
import simmerpoint.report.ResultFiles;
import simmerpoint.report.TextReport;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.study.FullStudy;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.pan.SaveMenu;

/** Everything about the answer that can be taken away as a file; what the command line writes, by the same code. */
final class ExportMenu extends SaveMenu {
    private static final int COLUMNS = 80;
    private static final FileKind TEXT = new FileKind("Text", "txt");

    private final LiveResults live;
    private final ScenarioDocument desk;
    private final DisplaySettings look;
    private final FileExport takeAway;

    ExportMenu(
            LiveResults live,
            ScenarioDocument desk,
            DisplaySettings look,
            FileExport takeAway,
            Supplier<byte[]> window) {
        super("Take away", "take-away", "Answers, tables and pictures as files", takeAway);
        this.live = live;
        this.desk = desk;
        this.look = look;
        this.takeAway = takeAway;
        addBytes("The answer in words", TEXT, "answer", this::words);
        add("The answer as figures", FileKind.FIGURES, "figures", this::answer);
        add("Light on the pan as a table", FileKind.TABLE, "light", this::answer);
        add("Light on the pan as a picture", FileKind.PICTURE, "light", this::answer);
        add("How to aim as figures", FileKind.FIGURES, "aim", this::aiming);
        add("How to aim as a table", FileKind.TABLE, "aim", this::aiming);
        add("How to aim as a picture", FileKind.PICTURE, "aim", this::aiming);
        getItems().add(new SeparatorMenuItem());
        item("Everything as a page to send to a friend\u2026", this::writePage);
        item(
                "This window as a picture\u2026",
                () -> takeAway.write("Write this window", FileKind.PICTURE, "window", window::get));
    }

    private void item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(e -> action.run());
        getItems().add(item);
    }

    private Optional<Callable<byte[]>> words() {
        UnitSystem units = look.unitsProperty().get();
        return settled().map(result -> () -> text(result, units));
    }

    private Optional<Callable<ResultFiles>> answer() {
        UnitSystem units = look.unitsProperty().get();
        return settled().map(result -> () -> ResultFiles.of(result, units));
    }

    private Optional<Callable<ResultFiles>> aiming() {
        UnitSystem units = look.unitsProperty().get();
        return aimed().map(result -> () -> ResultFiles.of(result, units));
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

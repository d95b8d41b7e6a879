package simmerpoint.viewer.app;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.drawing.output.Paper;
import simmerpoint.report.CookerReport;
import simmerpoint.report.CutFiles;
import simmerpoint.report.PageStudy;
import simmerpoint.report.ResultFiles;
import simmerpoint.report.TextReport;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.dialog.TakeAwayMenu;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.workshop.CookerStudy;

/** Menu of all exports; writes the same files as the command line, by the same code. */
final class ExportMenu extends TakeAwayMenu {
    private static final int COLUMNS = 80;
    private static final FileKind TEXT = new FileKind("Text", "txt");

    private final LiveResults live;
    private final ScenarioDocument document;
    private final DisplaySettings settings;
    private final FileExport export;

    ExportMenu(
            LiveResults live,
            ScenarioDocument document,
            DisplaySettings settings,
            FileExport export,
            Supplier<byte[]> window) {
        super("take-away", "Answers, tables and pictures as files", export);
        this.live = live;
        this.document = document;
        this.settings = settings;
        this.export = export;
        addBytes("The answer in words", TEXT, "answer", this::words);
        add("The answer as figures", FileKind.FIGURES, "figures", this::answer);
        add("Light on the pan as a table", FileKind.TABLE, "light", this::answer);
        add("Light on the pan as a picture", FileKind.PICTURE, "light", this::answer);
        add("How to aim as figures", FileKind.FIGURES, "aim", this::aiming);
        add("How to aim as a table", FileKind.TABLE, "aim", this::aiming);
        add("How to aim as a picture", FileKind.PICTURE, "aim", this::aiming);
        getItems().add(new SeparatorMenuItem());
        addBytes(
                "Patterns to print, at full size",
                new FileKind("Patterns", "pdf"),
                "patterns",
                () -> cutting(CutFiles::pdf));
        addBytes("Sheets for a cutter", new FileKind("Drawing", "svg"), "sheets", () -> cutting(CutFiles::svg));
        addBytes("Sheets for a cutter", new FileKind("Drawing", "dxf"), "sheets", () -> cutting(CutFiles::dxf));
        getItems().add(new SeparatorMenuItem());
        item("Everything as a page to send to a friend (HTML)\u2026", this::writePage);
        item(
                "This window as a picture (PNG)\u2026",
                () -> export.write("Write this window", FileKind.PICTURE, "window", window::get));
    }

    private void item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(e -> action.run());
        getItems().add(item);
    }

    private Optional<Callable<byte[]>> words() {
        UnitSystem units = settings.unitsProperty().get();
        return settled().map(result -> () -> text(result, units));
    }

    private Optional<Callable<ResultFiles>> answer() {
        UnitSystem units = settings.unitsProperty().get();
        return settled().map(result -> () -> ResultFiles.of(result, units));
    }

    private Optional<Callable<byte[]>> cutting(Function<CutFiles, Supplier<byte[]>> file) {
        CheckedScenario read = document.readProperty().get();
        UnitSystem units = settings.unitsProperty().get();
        return Optional.of(() -> file.apply(CutFiles.of(
                        CookerStudy.cut(read, units, TraceOptions.defaults(), Progress.NONE),
                        Paper.usual(units),
                        units))
                .get());
    }

    private Optional<Callable<ResultFiles>> aiming() {
        UnitSystem units = settings.unitsProperty().get();
        return aimed().map(result -> () -> ResultFiles.of(result, units));
    }

    private static byte[] text(TraceResult result, UnitSystem units) {
        String lines = String.join("\n", TextReport.lines(TraceAnswer.of(result, units), COLUMNS, false));
        return (lines + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Only settled results are exported. */
    private Optional<TraceResult> settled() {
        LiveState now = live.stateProperty().get();
        return now != null && now.settled() && now.current() ? now.result() : Optional.empty();
    }

    private Optional<AimResult> aimed() {
        LiveState now = live.stateProperty().get();
        return now == null ? Optional.empty() : live.studiesProperty().get().aimOf(now.scenario());
    }

    private void writePage() {
        CheckedScenario read = document.readProperty().get();
        String name = document.fileProperty()
                .get()
                .map(file -> file.getFileName().toString())
                .orElse("scenario.yaml");
        UnitSystem units = settings.unitsProperty().get();
        export.write("Write a page", FileKind.PAGE, name.replaceFirst("\\.ya?ml$", ""), () -> {
            read.atOneMoment();
            TraceOptions usual = TraceOptions.defaults();
            TraceOptions many = usual.withRays(SafetyStudy.USUAL_RAYS);
            PageStudy all = PageStudy.run(read, units, usual, many, Progress.NONE);
            return CookerReport.bytes(read, all.cooker(), all.safety(), name, units);
        });
    }
}

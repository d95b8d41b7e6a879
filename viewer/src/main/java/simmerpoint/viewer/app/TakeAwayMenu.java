package simmerpoint.viewer.app;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import simmerpoint.answer.TraceAnswer;
import simmerpoint.report.CsvReport;
import simmerpoint.report.JsonReport;
import simmerpoint.report.PngReport;
import simmerpoint.report.TextReport;
import simmerpoint.study.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.asking.FileKind;
import simmerpoint.viewer.asking.TakeAway;
import simmerpoint.viewer.live.LiveState;

/** Everything about the answer that can be taken away as a file; what the command line writes, by the same code. */
final class TakeAwayMenu extends MenuButton {
    private static final int COLUMNS = 80;
    private static final FileKind TEXT = new FileKind("Text", "txt");

    private final ObservableValue<LiveState> state;
    private final TakeAway takeAway;

    TakeAwayMenu(
            ObservableValue<LiveState> state,
            ObservableValue<UnitSystem> units,
            TakeAway takeAway,
            Supplier<byte[]> window) {
        super("Take away");
        this.state = state;
        this.takeAway = takeAway;
        setId("take-away");
        add("The answer in words\u2026", TEXT, "answer", r -> text(r, units.getValue()));
        add("Figures (JSON)\u2026", FileKind.FIGURES, "figures", JsonReport::bytes);
        add("Light on the pan as a table\u2026", FileKind.TABLE, "light", CsvReport::bytes);
        add(
                "Light on the pan as a picture\u2026",
                FileKind.PICTURE,
                "light",
                r -> PngReport.bytes(r, units.getValue()));
        MenuItem all = new MenuItem("This window as a picture\u2026");
        all.setOnAction(e -> takeAway.write("Write this window", FileKind.PICTURE, "window", window::get));
        getItems().add(all);
        state.addListener((value, before, now) -> enable());
        enable();
    }

    private void add(String words, FileKind kind, String name, Function<TraceResult, byte[]> maker) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(e -> settled()
                .ifPresent(
                        result -> takeAway.write(words.replace("\u2026", ""), kind, name, () -> maker.apply(result))));
        getItems().add(item);
    }

    private static byte[] text(TraceResult result, UnitSystem units) {
        String lines = String.join("\n", TextReport.lines(TraceAnswer.of(result, units), COLUMNS, false));
        return (lines + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Only a finished answer leaves the window. */
    private Optional<TraceResult> settled() {
        LiveState now = state.getValue();
        return now != null && now.settled() && now.current() ? now.result() : Optional.empty();
    }

    private void enable() {
        boolean none = settled().isEmpty();
        getItems().stream().limit(getItems().size() - 1L).forEach(item -> item.setDisable(none));
    }
}

package simmerpoint.viewer.cook;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.chart.DayRibbon;
import simmerpoint.study.day.DayResult;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.viewer.document.ScenarioDocument;

/** The day as a ribbon of heat levels; the hour is set by dragging, by a click, or with the arrow keys. */
final class DayStrip extends Drawn {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");
    private static final int GRAIN = 5;

    private final ScenarioDocument document;
    private Optional<DayRibbon> ribbon = Optional.empty();

    DayStrip(ScenarioDocument document) {
        super("day-strip");
        this.document = document;
        setAccessibleRole(AccessibleRole.SLIDER);
        setCursor(Cursor.HAND);
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> {
            requestFocus();
            document.beginGesture();
            to(e);
        });
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::to);
        addEventHandler(MouseEvent.MOUSE_RELEASED, e -> document.endGesture());
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** Shows a day; faded if it is that of the design before its last change. */
    void show(Optional<DayResult> day, boolean faded) {
        Optional<ZonedDateTime> now = document.readProperty()
                .get()
                .scenario()
                .site()
                .filter(site -> site.timed())
                .map(site -> site.when());
        ribbon = day.filter(d -> !d.curve().isEmpty()).map(d -> new DayRibbon(d, now, faded ? 0.5 : 1));
        setAccessibleText("Hour of the day: " + now.map(CLOCK::format).orElse("none")
                + ". Arrow keys set it, with Shift by hours.");
        redraw();
    }

    private void to(MouseEvent e) {
        ribbon.ifPresent(r -> set(r.time(box(), e.getX() / zoom())));
    }

    private void set(ZonedDateTime time) {
        int minute = time.getHour() * 60 + time.getMinute();
        int round = Math.min(24 * 60 - GRAIN, GRAIN * Math.round(minute / (float) GRAIN));
        document.change(Map.of("when.time", String.format(java.util.Locale.ROOT, "%02d:%02d", round / 60, round % 60)));
    }

    private void key(KeyEvent e) {
        int way = switch (e.getCode()) {
            case RIGHT, UP -> 1;
            case LEFT, DOWN -> -1;
            default -> 0;
        };
        Optional<ZonedDateTime> now = ribbon.flatMap(DayRibbon::now);
        if (way != 0 && now.isPresent() && !e.isShortcutDown()) {
            set(now.get().plusMinutes(way * (e.isShiftDown() ? 60L : 15L)));
            e.consume();
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return zoom() * DayRibbon.HEIGHT;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        ribbon.ifPresent(r -> r.draw(canvas, box));
    }
}

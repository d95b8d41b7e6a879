package simmerpoint.viewer.pan;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.TextAlignment;
import simmerpoint.viewer.theme.Shade;

/**
 * A flux map that can be read: under the mouse, or with the arrow keys cell by cell (with Shift ten cells), Escape stops
 * reading. What is read goes with the mouse, and with the keyboard's focus.
 */
abstract class MapView extends Drawn {
    private static final int LARGE_STEP = 10;

    private final String meaning;
    private final ReadOnlyObjectWrapper<String> readout = new ReadOnlyObjectWrapper<>(this, "readout", "");
    private Optional<MapState> state = Optional.empty();
    private Optional<Place> reading = Optional.empty();

    MapView(String id, String meaning) {
        super(id);
        this.meaning = meaning;
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(meaning);
        setCursor(Cursor.CROSSHAIR);
        addEventHandler(MouseEvent.MOUSE_MOVED, e -> point(e.getX(), e.getY()));
        addEventHandler(MouseEvent.MOUSE_EXITED, e -> read(Optional.empty()));
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> requestFocus());
        focusedProperty().addListener((value, before, now) -> {
            if (!now && !isHover()) {
                read(Optional.empty());
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** Where the map lies. */
    abstract MapFrame frame(MapState shown, double width, double height);

    /** What is said of a place. */
    abstract String words(MapState shown, Place place);

    /** What the whole says. */
    abstract String summary(MapState shown);

    abstract void paint(Pen pen, MapState shown, double width, double height);

    /** What is said of the place that is read; empty if none is. */
    ReadOnlyObjectProperty<String> readoutProperty() {
        return readout.getReadOnlyProperty();
    }

    /** Shows another state; the place that is read stays. */
    final void show(Optional<MapState> next) {
        state = next.map(s -> s.read(reading));
        tell();
        redraw();
    }

    private void tell() {
        String said =
                state.flatMap(s -> s.reading().map(place -> words(s, place))).orElse("");
        readout.set(said);
        setAccessibleText(
                meaning + ". " + (said.isEmpty() ? state.map(this::summary).orElse("") : said));
    }

    private void read(Optional<Place> place) {
        if (!place.equals(reading)) {
            reading = place;
            show(state);
        }
    }

    private Optional<MapFrame> frame() {
        return state.map(s -> frame(s, Math.floor(getWidth()), Math.floor(getHeight())));
    }

    private void point(double x, double y) {
        read(frame().flatMap(frame -> frame.at(x, y)));
    }

    private void key(KeyEvent e) {
        int far = e.isShiftDown() ? LARGE_STEP : 1;
        boolean used = switch (e.getCode()) {
            case LEFT -> step(-far, 0);
            case RIGHT -> step(far, 0);
            case UP -> step(0, -far);
            case DOWN -> step(0, far);
            case ESCAPE -> stop();
            default -> false;
        };
        if (used) {
            e.consume();
        }
    }

    private boolean step(int right, int down) {
        frame().ifPresent(frame -> {
            Place start = new Place(
                    frame.map().first(frame.map().columns() / 2),
                    frame.map().second(frame.map().rows() / 2));
            read(Optional.of(frame.stepped(reading.orElse(start), right, down)));
        });
        return true;
    }

    private boolean stop() {
        boolean was = reading.isPresent();
        read(Optional.empty());
        return was;
    }

    @Override
    final void paint(Pen pen, double width, double height) {
        if (state.isPresent()) {
            paint(pen, state.get(), width, height);
        } else {
            pen.g().setFill(pen.shade(Shade.QUIET));
            pen.words("Light is traced \u2026", width / 2, height / 2, TextAlignment.CENTER, Pen.font(13), width);
        }
    }
}

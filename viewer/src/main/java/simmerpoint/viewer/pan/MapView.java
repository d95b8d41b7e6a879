package simmerpoint.viewer.pan;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.map.MapFrame;
import simmerpoint.drawing.map.Place;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;

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
        addEventHandler(MouseEvent.MOUSE_MOVED, e -> point(e.getX() / zoom(), e.getY() / zoom()));
        addEventHandler(MouseEvent.MOUSE_EXITED, e -> read(Optional.empty()));
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> requestFocus());
        focusedProperty().addListener((value, before, now) -> {
            if (!now && !isHover()) {
                read(Optional.empty());
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** What is drawn; empty if there is nothing to see. */
    abstract Optional<? extends Drawing> drawing(MapState shown);

    /** Where the map lies in a box; empty if there is none. */
    abstract Optional<MapFrame> frame(MapState shown, Box box);

    /** What is said of a place. */
    abstract String words(MapState shown, Place place);

    /** What the whole says. */
    abstract String summary(MapState shown);

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
        return state.flatMap(s -> frame(s, box()));
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
    protected final void paint(FxCanvas canvas, Box box) {
        if (state.isPresent()) {
            drawing(state.get()).ifPresent(d -> d.draw(canvas, box));
        } else {
            canvas.write(Text.at(box.middleX(), box.middleY(), "Tracing light\u2026")
                    .in(TextStyle.SOFT)
                    .size(13)
                    .middle()
                    .within(box.width()));
        }
    }
}

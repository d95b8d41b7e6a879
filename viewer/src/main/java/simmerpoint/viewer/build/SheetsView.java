package simmerpoint.viewer.build;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.pattern.SheetsDrawing;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.viewer.canvas.FxMetrics;
import simmerpoint.workshop.Piece;

/** Sheets of one sort with their pieces; those like the one that is pointed at are marked. Arrow keys go through the sorts. */
final class SheetsView extends Drawn {
    private static final double ROOM = 4;

    private final SheetsDrawing drawing;
    private final List<Piece> sorts;
    private final ObjectProperty<Optional<Piece>> pointed;

    SheetsView(
            String id,
            String meaning,
            SheetsDrawing drawing,
            List<Piece> all,
            ObjectProperty<Optional<Piece>> pointed) {
        super(id);
        this.drawing = drawing;
        this.pointed = pointed;
        List<String> here = drawing.layout().sheets().stream()
                .flatMap(sheet -> sheet.placed().stream())
                .map(placed -> placed.piece().name())
                .distinct()
                .toList();
        sorts = all.stream().filter(piece -> here.contains(piece.name())).toList();
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(
                meaning + " on " + drawing.layout().sheets().size() + " sheets. Arrow keys go through the pieces.");
        addEventHandler(MouseEvent.MOUSE_MOVED, e -> point(e.getX() / zoom(), e.getY() / zoom()));
        addEventHandler(MouseEvent.MOUSE_EXITED, e -> pointed.set(Optional.empty()));
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> requestFocus());
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        pointed.addListener((value, before, now) -> redraw());
    }

    private Box inside() {
        return box().inside(ROOM, ROOM, ROOM, 0);
    }

    private void point(double x, double y) {
        pointed.set(drawing.at(inside(), x, y).flatMap(found -> named(found.name())));
    }

    private Optional<Piece> named(String name) {
        return sorts.stream().filter(piece -> piece.name().equals(name)).findFirst();
    }

    private void key(KeyEvent e) {
        int way = switch (e.getCode()) {
            case RIGHT, DOWN -> 1;
            case LEFT, UP -> -1;
            default -> 0;
        };
        if (way != 0 && !sorts.isEmpty()) {
            int now = pointed.get().map(sorts::indexOf).orElse(-1);
            int next = now < 0 ? (way > 0 ? 0 : sorts.size() - 1) : Math.floorMod(now + way, sorts.size());
            pointed.set(Optional.of(sorts.get(next)));
            e.consume();
        }
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        double zoom = zoom();
        return Math.ceil(zoom * (drawing.height(Math.max(1, width / zoom - 2 * ROOM), FxMetrics::width) + ROOM));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        drawing.draw(canvas, inside());
        pointed.get().ifPresent(piece -> drawing.mark(canvas, inside(), piece.name()));
    }
}

package simmerpoint.viewer.build;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.pattern.PanelMap;
import simmerpoint.viewer.canvas.Drawn;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.workshop.Piece;

/** The dish seen from the sun: the places of the piece that is pointed at are marked, and a panel pointed at points at its piece. */
final class DishMap extends Drawn {
    private final PanelMap map;
    private final List<Piece> panels;
    private final ObjectProperty<Optional<Piece>> pointed;

    DishMap(String id, PanelMap map, List<Piece> panels, ObjectProperty<Optional<Piece>> pointed) {
        super(id);
        this.map = map;
        this.panels = panels;
        this.pointed = pointed;
        setFocusTraversable(false);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("Which panel goes where, seen from the sun");
        addEventHandler(MouseEvent.MOUSE_MOVED, this::point);
        addEventHandler(MouseEvent.MOUSE_EXITED, e -> pointed.set(Optional.empty()));
        pointed.addListener((value, before, now) -> redraw());
    }

    private void point(MouseEvent e) {
        pointed.set(map.at(box(), e.getX() / zoom(), e.getY() / zoom())
                .flatMap(place -> panels.stream()
                        .filter(piece -> piece.panels().contains(place.number() - 1))
                        .findFirst()));
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        map.draw(canvas, box);
        pointed.get().ifPresent(piece -> map.mark(canvas, box, piece.panels()));
    }
}

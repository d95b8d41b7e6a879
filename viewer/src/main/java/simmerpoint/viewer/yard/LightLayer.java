package simmerpoint.viewer.yard;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.cooker.Callout;
import simmerpoint.drawing.cooker.PersonOutline;
import simmerpoint.drawing.cooker.SideFrame;
import simmerpoint.drawing.cooker.SideScene;
import simmerpoint.pan.Pan;
import simmerpoint.safety.person.PersonShape;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.SideView.Place;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.viewer.light.LightFound;
import simmerpoint.viewer.light.LightOverlay;
import simmerpoint.viewer.light.LightPane;
import simmerpoint.viewer.light.PersonHand;
import simmerpoint.viewer.light.PersonState;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.theme.Zoom;

/** The light under the side view, on and off, and a person over it to take hold of; the choices stand in the lower left corner. */
final class LightLayer {
    private static final double EDGE = 8;
    private static final double BELOW_GROUND = 14;
    private static final double ROOM = 170;
    private static final double CLEAR = 6;
    private static final double PAD = 7;
    private static final double LEAST_ROOM = 130;

    /** Of the height, from above. */
    private static final double SHOULDERS = 0.3;

    /** Free above the head, m. */
    private static final double ABOVE_HEAD = 0.1;

    private final LightOverlay overlay;
    private final Canvas light = new Canvas();
    private final Canvas said = new Canvas();
    private final Region person = new Region();
    private final ToggleButton taken;
    private final Label why = new Label();
    private final HBox choices;
    private Optional<SideFrame> frame = Optional.empty();
    private Optional<PersonState> state = Optional.empty();
    private UnitSystem units = UnitSystem.METRIC;
    private Optional<SideScene> scene = Optional.empty();
    private Theme theme = Theme.LIGHT;
    private Box room = new Box(0, 0, 0, 0);

    LightLayer(LightOverlay overlay) {
        this.overlay = overlay;
        ToggleButton on = LightPane.toggle(
                "yard-light",
                "Light",
                "Show what the light around the focus can do, and a person in it",
                overlay.choice().onYardProperty());
        taken = LightPane.toggle(
                "yard-light-taken",
                "Pan taken away",
                "The light with the pan taken away, or with the pan in place",
                overlay.choice().panTakenProperty());
        why.setId("yard-light-why");
        why.getStyleClass().add("yard-words");
        why.textProperty().bind(overlay.wordsProperty());
        choices = new HBox(6, on, taken, why);
        choices.setAlignment(Pos.CENTER_LEFT);
        choices.getStyleClass().add("yard-light");
        choices.setPickOnBounds(false);
        light.setMouseTransparent(true);
        said.setMouseTransparent(true);
        person.setId("yard-person");
        person.getStyleClass().add("yard-person");
        person.setFocusTraversable(true);
        person.setAccessibleRole(AccessibleRole.SLIDER);
        Tooltip.install(person, new Tooltip("Drag the person, or move it with the arrow keys; Home puts it back."));
        PersonHand.on(person, overlay.choice(), new Ground());
    }

    /** What lies under the side view. */
    Node below() {
        return light;
    }

    /** What lies over it. */
    List<Node> above() {
        return List.of(said, choices);
    }

    /** The person, under the handles. */
    Node person() {
        return person;
    }

    /** The light that is shown. */
    private Optional<LightFound> found() {
        return overlay.shownProperty().get();
    }

    /** What a scene must have room for besides the cooker: the light, and a person as near as is safe. */
    static List<Place> ends(LightFound found, boolean panTaken) {
        double slide = found.scenario().stand().slideMetres();
        double safe = PersonState.safe(found) - slide;
        List<Place> corners = found.slice(panTaken).corners();
        double left = corners.get(0).towardsSunMetres();
        double right = Math.max(corners.get(1).towardsSunMetres(), safe + 2 * PersonShape.HALF_WIDTH);
        double reached = found.risks(panTaken)
                .reach(Hazard.DISCOMFORT)
                .height()
                .map(Estimate::value)
                .orElse(0.0);
        double high = Math.max(reached, PersonShape.HEIGHT + ABOVE_HEAD);
        return List.of(new Place(left, 0), new Place(right, high));
    }

    /** What the choices cover, units. */
    Box box() {
        double zoom = Zoom.of(choices);
        return new Box(
                choices.getLayoutX() / zoom,
                choices.getLayoutY() / zoom,
                choices.getWidth() / zoom,
                choices.getHeight() / zoom);
    }

    void resize(double width, double height) {
        for (Canvas sheet : new Canvas[] {light, said}) {
            sheet.setWidth(width);
            sheet.setHeight(height);
        }
    }

    /** Paints for a scene in its frame. */
    void paint(SideScene next, SideFrame now, Box box, UnitSystem system, Theme dressed) {
        scene = Optional.of(next);
        frame = Optional.of(now);
        room = box;
        units = system;
        theme = dressed;
        repaint();
    }

    /** Paints anew what has not changed but for the person. */
    void repaint() {
        if (frame.isEmpty()) {
            return;
        }
        double[] walk = walk();
        state = isLit() ? found().map(f -> PersonState.of(f, overlay.choice(), walk[0], walk[1])) : Optional.empty();
        taken.setVisible(state.isPresent() && overlay.scenario().target() instanceof Pan);
        taken.setManaged(taken.isVisible());
        for (Node node : List.of(person, light, said)) {
            node.setVisible(state.isPresent());
        }
        state.ifPresent(s -> {
            FxCanvas under = SideSheet.cleared(light, theme);
            s.found().slice(s.panTaken()).draw(under, frame.get());
            PersonOutline.draw(under, frame.get(), s.person().towardsSun() - slide());
            tell(s, SideSheet.cleared(said, theme));
        });
        layout();
    }

    private boolean isLit() {
        return scene.filter(s -> !s.lit().isEmpty()).isPresent();
    }

    private double slide() {
        return overlay.scenario().stand().slideMetres();
    }

    private Box outline(PersonState s) {
        return PersonOutline.box(frame.orElseThrow(), s.person().towardsSun() - slide());
    }

    private void tell(PersonState s, FxCanvas over) {
        String words = s.words(units);
        Box box = outline(s);
        double right = room.right() - box.right() - 2 * CLEAR;
        double wide = Math.max(LEAST_ROOM, Math.min(ROOM, Math.max(right, box.x() - room.x()) - 2 * PAD));
        Callout callout = new Callout(s.brief(units), wide, false);
        // Beside the person, where neither head nor focus is covered.
        double off = box.width() / 2 + CLEAR + PAD + wide / 2;
        double x = right >= LEAST_ROOM + 2 * PAD ? box.middleX() + off : box.middleX() - off;
        callout.draw(over, x, box.y() + SHOULDERS * box.height(), room);
        person.setAccessibleText("A person in the light, to move with the arrow keys. " + words);
    }

    private void layout() {
        double zoom = Zoom.of(choices);
        frame.ifPresent(f -> {
            choices.resizeRelocate(
                    EDGE, Math.rint(zoom * (f.ground() + BELOW_GROUND)), choices.prefWidth(-1), choices.prefHeight(-1));
            state.map(this::outline)
                    .ifPresent(box -> person.resizeRelocate(
                            zoom * box.x(), zoom * box.y(), zoom * box.width(), zoom * box.height()));
        });
    }

    private double[] walk() {
        SideFrame f = frame.orElseThrow();
        double low = f.at(room.x() + EDGE, 0).towardsSunMetres() + PersonShape.HALF_WIDTH + slide();
        double high = f.at(room.right() - EDGE, 0).towardsSunMetres() - PersonShape.HALF_WIDTH + slide();
        return new double[] {low, Math.max(low, high)};
    }

    /** The side view as the ground under the person. */
    private final class Ground implements PersonHand.Ground {
        @Override
        public double at(MouseEvent e) {
            double x = person.getParent()
                    .sceneToLocal(e.getSceneX(), e.getSceneY())
                    .getX();
            return frame.orElseThrow().at(x / Zoom.of(choices), 0).towardsSunMetres() + slide();
        }

        @Override
        public boolean isOnPerson(MouseEvent e) {
            return true;
        }

        @Override
        public double person() {
            return state.orElseThrow().person().towardsSun();
        }

        @Override
        public double[] walk() {
            return LightLayer.this.walk();
        }

        @Override
        public UnitSystem units() {
            return units;
        }
    }
}

package simmerpoint.viewer.light;

import java.util.function.Consumer;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.cooker.Callout;
import simmerpoint.drawing.cooker.FieldDrawing;
import simmerpoint.safety.person.PersonShape;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.viewer.parts.DrawingView;
import simmerpoint.viewer.theme.Theme;

/**
 * The light around the cooker seen from the side, and a grown-up to move through it: with the mouse, or with the arrow keys, with Shift
 * farther; Home puts the person back to the nearest safe place. The frame stays.
 */
final class LightView extends DrawingView {
    private static final double WIDEST = 900;
    private static final double CALLOUT = 30;

    /** What the window has besides the picture, and the least the picture is high, units. */
    private static final double BESIDES = 430;

    private static final double LEAST = 270;

    private final LightFound found;
    private final LightChoice choice;
    private final UnitSystem units;
    private final Consumer<PersonState> told;
    private FieldDrawing cooker;
    private PersonState state;

    /** Calls {@code told} with every new state. */
    LightView(LightFound found, LightChoice choice, UnitSystem units, Theme theme, Consumer<PersonState> told) {
        super("burns-light", "The light around the focus, by what it can do");
        this.found = found;
        this.choice = choice;
        this.units = units;
        this.told = told;
        widest(WIDEST);
        applyTheme(theme);
        setAccessibleRole(AccessibleRole.SLIDER);
        setFocusTraversable(true);
        Tooltip.install(this, new Tooltip("Drag the person, or move it with the arrow keys; Home puts it back."));
        PersonHand.on(this, choice, new Ground());
        // Held by this view alone, so that the choice does not keep views of older results alive.
        ChangeListener<Object> changed = (value, old, now) -> refresh();
        sceneProperty().addListener((value, old, now) -> follow(changed, now != null));
        refresh();
    }

    private void follow(ChangeListener<Object> changed, boolean seen) {
        choice.panTakenProperty().removeListener(changed);
        choice.onPageProperty().removeListener(changed);
        choice.personProperty().removeListener(changed);
        if (seen) {
            choice.panTakenProperty().addListener(changed);
            choice.onPageProperty().addListener(changed);
            choice.personProperty().addListener(changed);
            refresh();
        }
    }

    private void refresh() {
        boolean panTaken = choice.panTakenProperty().get();
        if (state == null || state.panTaken() != panTaken) {
            cooker = FieldDrawing.of(
                            found.risks(panTaken),
                            found.slice(panTaken),
                            found.light().people(),
                            units)
                    .roomy();
        }
        double[] walk = cooker.walk();
        state = PersonState.of(found, choice, walk[0], walk[1]);
        show(drawing());
        setAccessibleText(
                "The light around the focus, and a person to move with the arrow keys. " + state.words(units));
        told.accept(state);
    }

    private FieldDrawing drawing() {
        double tallest = getScene() == null ? LEAST : Math.max(LEAST, getScene().getHeight() / zoom() - BESIDES);
        FieldDrawing lit = choice.onPageProperty().get() ? cooker : cooker.withoutLight();
        return lit.withPerson(state.person().towardsSun()).tallest(tallest);
    }

    /** What is seen. */
    PersonState state() {
        return state;
    }

    /** Middle of the person as drawn, px. */
    Point2D person() {
        Box box = drawing().personBox(place());
        return new Point2D(box.x() + box.width() / 2, box.y() + box.height() / 2).multiply(zoom());
    }

    /** Pixels of a metre. */
    double pixelsPerMetre() {
        return zoom() * drawing().personBox(place()).width() / (2 * PersonShape.HALF_WIDTH);
    }

    /** The picture as the ground under the person. */
    private final class Ground implements PersonHand.Ground {
        @Override
        public double at(MouseEvent e) {
            return drawing().towardsSun(place(), e.getX() / zoom());
        }

        @Override
        public boolean isOnPerson(MouseEvent e) {
            return drawing().personBox(place()).contains(e.getX() / zoom(), e.getY() / zoom());
        }

        @Override
        public double person() {
            return state.person().towardsSun();
        }

        @Override
        public double[] walk() {
            return cooker.walk();
        }

        @Override
        public UnitSystem units() {
            return units;
        }
    }

    @Override
    protected void paint(FxCanvas canvas, Box box) {
        super.paint(canvas, box);
        Box person = drawing().personBox(place());
        Callout.ofHandle(state.gap(units), box.width())
                .draw(canvas, person.x() + person.width() / 2, person.y() - CALLOUT, place());
    }
}

package simmerpoint.viewer.yard;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.transform.Affine;
import javafx.scene.transform.Transform;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.cooker.Callout;
import simmerpoint.drawing.cooker.SideDrawing;
import simmerpoint.drawing.cooker.SideFrame;
import simmerpoint.drawing.cooker.SideScene;
import simmerpoint.pan.Pan;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.canvas.CaptionBoxes;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.viewer.canvas.FxMetrics;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.theme.Zoom;

/**
 * The side view: the drawing, and over it the handles. While a hand moves something the frame stays as it is, so that the
 * thing stays under the hand, and afterwards too while everything is still seen and not much too small. Any other change fits it
 * anew. Everything grows with the window: the drawing is in units, of which one is {@link Zoom} pixels.
 */
final class SideSheet extends Region {
    /** After a drag, a drawing that could be so much larger is fitted anew. */
    private static final double MUCH_LARGER = 1.3;

    private static final double BESIDE_SUN = 90;
    private static final double SUN_WORDS = 68;
    private static final double LINE = 17;
    private static final double LEAST_WORDS = 110;

    /** Room for a sheet's outline, units. */
    private static final double OUTLINE = 2;

    /** The sheet of the words grows by so many px, so that it seldom needs another. */
    private static final double SIZES = 16;

    private final Canvas canvas = new Canvas();
    private final Canvas said = new Canvas();
    private final Map<Handle, Grip> grips = new EnumMap<>(Handle.class);
    private final Map<Handle, Point2D> places = new EnumMap<>(Handle.class);
    private final Map<Handle, Point2D> off = new EnumMap<>(Handle.class);
    private final Region pan = new Region();
    private final Label inForce = new Label();
    private final Hand hand;
    private final LightLayer light;
    private SideScene scene;
    private SideFrame frame;
    private UnitSystem system = UnitSystem.METRIC;
    private Theme theme = Theme.LIGHT;
    private Optional<Handle> near = Optional.empty();
    private boolean resting;

    SideSheet(Hand hand, LightLayer light) {
        this.hand = hand;
        this.light = light;
        setId("yard-side");
        setAccessibleRole(AccessibleRole.PARENT);
        canvas.setMouseTransparent(true);
        said.setMouseTransparent(true);
        pan.setId("yard-pan");
        pan.setCursor(Cursor.OPEN_HAND);
        Tooltip.install(pan, new Tooltip(Handle.PULL_BACK.title() + ": " + Handle.PULL_BACK.meaning() + "."));
        getChildren().addAll(light.below(), canvas, light.person(), pan);
        for (Handle handle : Handle.values()) {
            Grip grip = new Grip(handle);
            grips.put(handle, grip);
            getChildren().add(grip);
            movable(grip, handle);
            grip.addEventHandler(KeyEvent.KEY_PRESSED, e -> key(handle, e));
            grip.focusedProperty().addListener((value, before, now) -> near(handle, now));
        }
        movable(pan, Handle.PULL_BACK);
        inForce.setId("yard-in-force");
        inForce.getStyleClass().add("yard-in-force");
        inForce.setWrapText(true);
        inForce.setMouseTransparent(true);
        getChildren().addAll(inForce, said);
        getChildren().addAll(light.above());
    }

    private void movable(Node node, Handle handle) {
        node.setOnMousePressed(e -> press(handle, e));
        node.setOnMouseDragged(this::drag);
        node.setOnMouseReleased(e -> release());
        node.hoverProperty().addListener((value, before, now) -> near(handle, now));
    }

    private void near(Handle handle, boolean is) {
        if (is || near.equals(Optional.of(handle))) {
            near = is ? Optional.of(handle) : Optional.empty();
            caption();
        }
        if (resting && !hand.holds() && !pointed()) {
            resting = false;
            if (scene != null && !fits()) {
                refit();
            }
        }
    }

    /** Whether the mouse is on anything that can be moved. */
    private boolean pointed() {
        return pan.isHover() || grips.values().stream().anyMatch(Node::isHover);
    }

    private Point2D here(MouseEvent e) {
        return sceneToLocal(e.getSceneX(), e.getSceneY()).multiply(1 / Zoom.of(this));
    }

    private void press(Handle handle, MouseEvent e) {
        if (e.getButton() == MouseButton.PRIMARY && scene != null) {
            grips.get(handle).requestFocus();
            Point2D p = here(e);
            hand.take(handle, scene.scenario(), frame.at(p.getX(), p.getY()), system);
            e.consume();
        }
    }

    private void drag(MouseEvent e) {
        Point2D p = here(e);
        hand.move(frame.at(p.getX(), p.getY()), !e.isAltDown());
        e.consume();
    }

    private void release() {
        if (hand.holds()) {
            hand.letGo();
            rest();
        }
    }

    /** Nothing slips away from under the mouse that has just let go of it. */
    private void rest() {
        resting = pointed();
        if (!resting && !fits()) {
            fit();
        }
        paint();
    }

    private void key(Handle handle, KeyEvent e) {
        if (e.getCode() == KeyCode.ESCAPE && hand.holds()) {
            hand.cancel();
            rest();
            e.consume();
            return;
        }
        int way = Hand.way(handle, e.getCode());
        if (way != 0 && !e.isShortcutDown() && scene != null && !hand.holds()) {
            hand.step(handle, scene.scenario(), way, e.isShiftDown(), system);
            e.consume();
        }
    }

    /** Shows a scene; while somebody holds something its frame stays. */
    void show(SideScene now, UnitSystem units, Theme dressed, boolean held) {
        boolean other = scene == null
                || !scene.scenario().equals(now.scenario())
                || !scene.rays().equals(now.rays())
                || !scene.lit().equals(now.lit());
        scene = now;
        system = units;
        theme = dressed;
        boolean still = hand.holds() || resting || held;
        if (frame == null || (!still && (other || !fits()))) {
            fit();
        }
        paint();
    }

    /** The drawing above the words that explain its lines. */
    private Box above() {
        return box().inside(0, 0, 0, SideDrawing.keyHeight(scene, box().width(), FxMetrics::width));
    }

    /** Room for the words in the upper left corner, if they take more than half of the width: they must cover no handle. */
    private double words() {
        String words = new OffPlace(system).words(scene.scenario(), scene.pan().heightMetres());
        return FxMetrics.width(words, Text.SIZE, false) > box().width() / 2 ? 2 * LINE : 0;
    }

    private boolean fits() {
        return frame != null
                && frame.holds(scene, above())
                && SideFrame.around(scene, above(), words()).perMetre() < MUCH_LARGER * frame.perMetre();
    }

    private void fit() {
        if (scene != null && getWidth() > 0 && getHeight() > 0) {
            frame = SideFrame.around(scene, above(), words());
        }
    }

    private void refit() {
        fit();
        paint();
    }

    private void paint() {
        if (frame == null || scene == null || canvas.getWidth() <= 0) {
            return;
        }
        SideDrawing.live(scene, system, frame).draw(cleared(canvas, theme), box());
        light.paint(scene, frame, box(), system, theme);
        tellInForce();
        place();
        caption();
    }

    /** An empty sheet to draw on in units. */
    static FxCanvas cleared(Canvas sheet, Theme theme) {
        GraphicsContext g = sheet.getGraphicsContext2D();
        g.setTransform(new Affine());
        g.clearRect(0, 0, sheet.getWidth(), sheet.getHeight());
        g.setTransform(new Affine(Transform.scale(Zoom.of(sheet), Zoom.of(sheet))));
        return new FxCanvas(g, theme);
    }

    private Box box() {
        double zoom = Zoom.of(this);
        return new Box(0, 0, getWidth() / zoom, getHeight() / zoom);
    }

    /** In the upper left corner, beside the words at the sun. */
    private void tellInForce() {
        inForce.setText(new OffPlace(system).words(scene.scenario(), scene.pan().heightMetres()));
        inForce.setVisible(!inForce.getText().isEmpty());
        double zoom = Zoom.of(this);
        double[] sun = frame.sun(scene, box());
        double room = sun[1] < BESIDE_SUN ? zoom * (sun[0] - SUN_WORDS) : getWidth() - 16;
        double wide = Math.max(zoom * LEAST_WORDS, Math.min(room, Math.ceil(inForce.prefWidth(-1))));
        inForce.resizeRelocate(8, 4, wide, inForce.prefHeight(wide));
    }

    private void place() {
        double zoom = Zoom.of(this);
        double half = Math.max(12, scene.scenario().target().radiusMetres() * frame.perMetre());
        double high = scene.scenario().target() instanceof Pan p ? p.heightMetres() * frame.perMetre() : 0;
        double tall = Math.max(24, high);
        double middle = frame.y(scene.pan()) - high / 2;
        Box drawn = new Box(frame.x(scene.pan()) - half, middle - tall / 2, 2 * half, tall);
        pan.resizeRelocate(zoom * drawn.x(), zoom * drawn.y(), zoom * drawn.width(), zoom * drawn.height());
        if (hand.holds() || resting) {
            places.replaceAll((handle, place) -> wanted(handle).add(off.get(handle)));
        } else {
            places.putAll(Grips.clear(scene, frame, above(), taken(drawn)));
            places.forEach((handle, place) -> off.put(handle, place.subtract(wanted(handle))));
        }
        for (Grip grip : grips.values()) {
            Point2D p = places.get(grip.handle()).multiply(zoom);
            grip.setScaleX(zoom);
            grip.setScaleY(zoom);
            grip.resizeRelocate(p.getX() - Grip.SIZE / 2, p.getY() - Grip.SIZE / 2, Grip.SIZE, Grip.SIZE);
            grip.point(Grips.turn(grip.handle(), scene));
            grip.tell(Moves.words(grip.handle(), scene.scenario(), system));
        }
    }

    private Point2D wanted(Handle handle) {
        return Grips.place(handle, scene, frame, above());
    }

    /** What no handle may cover: pan, words of the drawing, words in the corner. */
    private List<Box> taken(Box pan) {
        List<Box> taken = new ArrayList<>(CaptionBoxes.of(SideDrawing.live(scene, system, frame), box()));
        taken.add(pan);
        taken.add(light.box());
        if (inForce.isVisible()) {
            double zoom = Zoom.of(this);
            taken.add(new Box(
                    inForce.getLayoutX() / zoom,
                    inForce.getLayoutY() / zoom,
                    inForce.getWidth() / zoom,
                    inForce.getHeight() / zoom));
        }
        return taken;
    }

    /** The value of what is near the hand or the keyboard's. */
    private void caption() {
        Optional<Handle> shown = hand.held().or(() -> near).filter(places::containsKey);
        said.setVisible(shown.isPresent());
        shown.ifPresent(this::say);
    }

    private void say(Handle handle) {
        Point2D p = places.get(handle);
        double top = p.getY() < 50 || handle == Handle.SUN ? p.getY() + 20 : p.getY() - 46;
        Callout words = Callout.ofHandle(Moves.words(handle, scene.scenario(), system), box().width());
        Point2D corner = lay(said, words.sheet(FxMetrics::width, p.getX(), top, box()));
        FxCanvas over = cleared(said, theme);
        said.getGraphicsContext2D().translate(-corner.getX(), -corner.getY());
        words.draw(over, p.getX(), top, box());
    }

    /** Lays a canvas over a box and its outline, no larger than that takes, since all of it is painted; gives its corner, units. */
    private Point2D lay(Canvas sheet, Box box) {
        double zoom = Zoom.of(this);
        double x = Math.floor(zoom * (box.x() - OUTLINE));
        double y = Math.floor(zoom * (box.y() - OUTLINE));
        sheet.relocate(x, y);
        sheet.setWidth(SIZES * Math.ceil((zoom * (box.right() + OUTLINE) - x) / SIZES));
        sheet.setHeight(SIZES * Math.ceil((zoom * (box.bottom() + OUTLINE) - y) / SIZES));
        return new Point2D(x / zoom, y / zoom);
    }

    /** Middle of a handle in the coordinates of the scene. */
    Point2D handle(Handle handle) {
        Grip grip = grips.get(handle);
        return grip.localToScene(Grip.SIZE / 2, Grip.SIZE / 2);
    }

    /** Pixels per metre as drawn now; 0 before the first drawing. */
    double perMetre() {
        return frame == null ? 0 : frame.perMetre() * Zoom.of(this);
    }

    @Override
    protected void layoutChildren() {
        if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            light.resize(getWidth(), getHeight());
            refit();
        }
    }
}

package simmerpoint.viewer.yard;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import simmerpoint.dish.DishPlan;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.cooker.LivePanels;
import simmerpoint.drawing.cooker.PanelRaster;
import simmerpoint.drawing.cooker.ShadowOutline;
import simmerpoint.drawing.cooker.ShareDrawing;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.PanelWatts;
import simmerpoint.viewer.canvas.FxCanvas;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/**
 * The dish seen from the sun's side, each panel coloured by the share of its light that reaches the target. Pointing at a
 * panel, or going through them by arrow keys, tells its figures.
 */
final class PanelView extends Region {
    private final Canvas canvas = new Canvas();
    private final Pane holder = new Pane(canvas) {
        @Override
        public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
            return attribute == AccessibleAttribute.TEXT
                    ? heading.getText() + " " + words.getText()
                    : super.queryAccessibleAttribute(attribute, parameters);
        }
    };
    private final Label heading = new Label("What each panel delivers");
    private final Label words = new Label();
    private final Executor background;
    private final Executor delivery;
    private Optional<PanelRaster> raster = Optional.empty();
    private Raster coloured = new Raster(0, 0);
    private Optional<List<double[]>> shadow = Optional.empty();
    private Optional<PanelWatts> watts = Optional.empty();
    private Optional<String> note = Optional.empty();
    private Scenario scenario;
    private volatile DishPlan rastering;
    private Theme theme = Theme.LIGHT;
    private int chosen = -1;
    private boolean stale;
    private boolean recolour;

    PanelView(Executor background, Executor delivery) {
        this.background = background;
        this.delivery = delivery;
        setId("yard-panels");
        getStyleClass().add("yard-panels");
        heading.getStyleClass().add("yard-heading");
        heading.setWrapText(true);
        words.getStyleClass().add("yard-words");
        words.setWrapText(true);
        words.setId("yard-panel-words");
        holder.getStyleClass().add("yard-panel-picture");
        holder.setId("yard-panel-picture");
        holder.setFocusTraversable(true);
        holder.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        holder.setOnMouseMoved(e -> choose(at(e.getX(), e.getY())));
        holder.setOnMouseExited(e -> choose(-1));
        holder.setOnMousePressed(e -> holder.requestFocus());
        holder.focusedProperty().addListener((value, before, now) -> {
            if (!now && !holder.isHover()) {
                choose(-1);
            }
        });
        holder.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        getChildren().addAll(heading, holder, words);
    }

    private void key(KeyEvent e) {
        if (e.getCode() == KeyCode.ESCAPE && chosen >= 0) {
            choose(-1);
            e.consume();
            return;
        }
        int step = e.getCode() == KeyCode.RIGHT || e.getCode() == KeyCode.DOWN
                ? 1
                : e.getCode() == KeyCode.LEFT || e.getCode() == KeyCode.UP ? -1 : 0;
        int panels = watts.map(PanelWatts::panels).orElse(0);
        if (step != 0 && panels > 0 && !e.isShortcutDown()) {
            choose(Math.floorMod(Math.max(-1, chosen) + step * (e.isShiftDown() ? 10 : 1), panels));
            e.consume();
        }
    }

    /** Whether everything shown is drawn, its panels among it. */
    boolean drawn() {
        return !stale && rastering == null;
    }

    /** Of which dish the panels are drawn. */
    Optional<DishPlan> drawnDish() {
        return raster.map(PanelRaster::dish);
    }

    /** The panel under a point of the picture. */
    private int at(double x, double y) {
        Box square = ShareDrawing.square(box());
        return raster.map(r -> r.panelAt((x - square.x()) / square.width(), (y - square.y()) / square.height()))
                .orElse(-1);
    }

    private void choose(int panel) {
        if (panel != chosen) {
            chosen = panel;
            paint();
            say();
        }
    }

    /** Shows a scenario with the newest there is to know of its panels; {@code note} stands in for it. */
    void show(Scenario now, Optional<PanelWatts> known, Optional<String> instead, Theme dressed) {
        recolour |= !known.equals(watts) || dressed != theme;
        if (scenario != null && !scenario.dish().equals(now.dish())) {
            chosen = -1;
        }
        if (!now.equals(scenario)) {
            shadow = Optional.empty();
        }
        scenario = now;
        watts = known;
        note = instead;
        theme = dressed;
        if (raster.filter(r -> r.dish().equals(now.dish())).isEmpty()) {
            rasterise();
        }
        say();
        stale = true;
        requestLayout();
    }

    /** Draws with the next frame, once for all that was shown until then. */
    private void refresh() {
        if (recolour && raster.filter(r -> r.dish().equals(scenario.dish())).isPresent()) {
            colour();
        }
        paint();
    }

    /** Another dish: its raster is worked out behind, and shown if nothing newer is wanted by then. */
    private void rasterise() {
        DishPlan wanted = scenario.dish();
        if (wanted.equals(rastering)) {
            return;
        }
        rastering = wanted;
        background.execute(() -> {
            if (wanted.equals(rastering)) {
                PanelRaster made = PanelRaster.of(wanted);
                delivery.execute(() -> rasterised(made));
            }
        });
    }

    /** A raster is there; it is of no use if by now another dish is shown. */
    private void rasterised(PanelRaster made) {
        if (made.dish().equals(rastering)) {
            rastering = null;
        }
        if (made.dish().equals(scenario.dish())) {
            raster = Optional.of(made);
            colour();
            paint();
        }
    }

    private PanelScene scene() {
        Optional<PanelWatts> fitting = watts.filter(w -> w.scenario().dish().equals(scenario.dish()));
        return new PanelScene(scenario, fitting, chosen);
    }

    private Box box() {
        return new Box(0, 0, canvas.getWidth(), canvas.getHeight());
    }

    /** Colours the panels; the slow part, needed when shares or the theme change. */
    private void colour() {
        recolour = false;
        PanelScene scene = scene();
        int unlit = rgb(Shade.HAIR.in(theme));
        int[] colours = new int[scene.watts().map(PanelWatts::panels).orElse(0)];
        for (int k = 0; k < colours.length; k++) {
            double share = scene.share(k);
            colours[k] = Double.isNaN(share) ? unlit : ShareDrawing.rgb(share);
        }
        int edges = rgb(Shade.LINE.in(theme).interpolate(Shade.SHEET.in(theme), 0.3));
        coloured = raster.map(r -> r.picture(colours, edges)).orElse(coloured);
    }

    private static int rgb(Color c) {
        return (int) Math.round(255 * c.getRed()) << 16
                | (int) Math.round(255 * c.getGreen()) << 8
                | (int) Math.round(255 * c.getBlue());
    }

    private void paint() {
        if (scenario != null && canvas.getWidth() > 0 && canvas.getHeight() > 0) {
            GraphicsContext g = canvas.getGraphicsContext2D();
            g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
            if (shadow.isEmpty()) {
                shadow = Optional.of(ShadowOutline.of(scenario));
            }
            Optional<LivePanels> panels = raster.map(r -> new LivePanels(r, coloured, shadow.get(), chosen, Set.of()));
            new ShareDrawing(panels).draw(new FxCanvas(g, theme), box());
        }
    }

    private void say() {
        words.setText(scenario == null ? "" : note.orElseGet(() -> scene().words()));
    }

    /** Height of the longest words, so that the picture stays while one panel after the other is read. */
    private double room(double width) {
        Text longest = new Text(PanelScene.LONGEST);
        longest.setFont(words.getFont());
        longest.setWrappingWidth(Math.max(1, width));
        return Math.ceil(longest.getLayoutBounds().getHeight());
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth() - 16;
        double head = heading.prefHeight(width);
        heading.resizeRelocate(8, 6, width, head);
        double foot = Math.max(room(width), words.prefHeight(width));
        double high = Math.max(0, getHeight() - head - 6 - foot - 6);
        holder.resizeRelocate(2, head + 6, getWidth() - 4, high);
        words.resizeRelocate(8, getHeight() - foot - 6, width, foot);
        if (canvas.getWidth() != getWidth() - 4 || canvas.getHeight() != high) {
            canvas.setWidth(Math.max(0, getWidth() - 4));
            canvas.setHeight(high);
            stale = true;
        }
        if (stale) {
            stale = false;
            refresh();
        }
    }
}

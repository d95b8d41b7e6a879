package simmerpoint.viewer.cook;

import javafx.scene.layout.Region;
import simmerpoint.viewer.theme.Zoom;

/**
 * The cooker from its side, below it the ribbon of the pan's places, and at the right what concerns time and place; in a narrow view
 * below, and in one that is low too nowhere: the drawer that takes its room asks where and when as well.
 */
public final class CookView extends Region {
    private static final double BESIDE_FROM = 800;
    private static final double BESIDE_SHARE = 0.3;
    private static final double BESIDE_LEAST = 280;
    private static final double BESIDE_MOST = 420;
    private static final double BELOW_FROM = 640;
    private static final double BELOW_SHARE = 0.32;

    private final Region yard;
    private final Region ribbon;
    private final Region time;

    /** Of its parts. */
    public CookView(Region yard, Region ribbon, Region time) {
        this.yard = yard;
        this.ribbon = ribbon;
        this.time = time;
        setId("cook-view");
        getStyleClass().add("cook-view");
        getStylesheets().add(CookView.class.getResource("cook.css").toExternalForm());
        getChildren().addAll(yard, ribbon, time);
    }

    @Override
    protected void layoutChildren() {
        double zoom = Zoom.of(this);
        double width = getWidth();
        double height = getHeight();
        double wide = width;
        double high = height;
        time.setVisible(width >= BESIDE_FROM || height >= BELOW_FROM * zoom);
        if (width >= BESIDE_FROM) {
            double beside =
                    Math.rint(Math.max(BESIDE_LEAST * zoom, Math.min(BESIDE_MOST * zoom, BESIDE_SHARE * width)));
            wide = width - beside;
            time.resizeRelocate(wide, 0, beside, height);
        } else if (height >= BELOW_FROM * zoom) {
            double below = Math.rint(BELOW_SHARE * height);
            high = height - below;
            time.resizeRelocate(0, high, width, below);
        }
        double band = Math.ceil(ribbon.prefHeight(wide));
        yard.resizeRelocate(0, 0, wide, Math.max(0, high - band));
        ribbon.resizeRelocate(0, Math.max(0, high - band), wide, band);
    }
}

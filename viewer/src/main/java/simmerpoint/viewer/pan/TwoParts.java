package simmerpoint.viewer.pan;

import javafx.scene.Node;
import javafx.scene.layout.Region;

/** Two parts one above the other, or side by side where there is more width than height. */
final class TwoParts extends Region {
    private static final double GAP = 8;
    private static final double WIDE = 1.2;
    private static final double LOWER_SHARE = 0.36;
    private static final double LOWER_LEAST = 168;
    private static final double LOWER_MOST = 360;
    private static final double RIGHT_SHARE = 0.5;

    private final Node light;
    private final Node curve;

    TwoParts(Node light, Node curve) {
        this.light = light;
        this.curve = curve;
        setMinSize(0, 0);
        getChildren().addAll(light, curve);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        if (width > WIDE * height) {
            double right = Math.floor(width * RIGHT_SHARE);
            light.resizeRelocate(0, 0, width - right - GAP, height);
            curve.resizeRelocate(width - right, 0, right, height);
        } else {
            double wanted = Math.max(LOWER_LEAST, Math.min(LOWER_MOST, LOWER_SHARE * height));
            double lower = Math.floor(Math.min(height / 2, wanted));
            light.resizeRelocate(0, 0, width, height - lower - GAP);
            curve.resizeRelocate(0, height - lower, width, lower);
        }
    }
}

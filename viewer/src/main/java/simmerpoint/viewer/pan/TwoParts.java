package simmerpoint.viewer.pan;

import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/** Two parts one above the other, or side by side where there is more width than height. */
final class TwoParts extends Region {
    private static final double GAP = 8;
    private static final double WIDE = 1.2;
    private static final double LEAST_WIDTH_FOR_TWO = 520;
    private static final double LEAST_HEIGHT_STACKED = 430;
    private static final double LEAST_HEIGHT_BESIDE = 190;
    private static final double LOWER_SHARE = 0.36;
    private static final double LOWER_LEAST = 194;
    private static final double LOWER_MOST = 360;
    private static final double RIGHT_SHARE = 0.5;

    private final Node light;
    private final Node curve;

    TwoParts(Node light, Node curve) {
        this.light = light;
        this.curve = curve;
        getChildren().addAll(light, curve);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinHeight(double width) {
        return width > LEAST_WIDTH_FOR_TWO ? LEAST_HEIGHT_BESIDE : LEAST_HEIGHT_STACKED;
    }

    @Override
    protected double computePrefHeight(double width) {
        return computeMinHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        if (width > LEAST_WIDTH_FOR_TWO && (width > WIDE * height || height < LEAST_HEIGHT_STACKED)) {
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

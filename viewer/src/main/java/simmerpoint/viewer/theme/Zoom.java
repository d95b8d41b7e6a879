package simmerpoint.viewer.theme;

import java.util.Locale;
import java.util.function.DoubleConsumer;
import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.Scene;

/** How much larger letters, handles and lines are than in the smallest window: they grow with the window, slower than it. */
public final class Zoom {
    /** The narrowest window in which nothing is cut off, px. */
    public static final double LEAST_WIDTH = 1024;

    /** The lowest window in which nothing is cut off, px. */
    public static final double LEAST_HEIGHT = 700;

    private static final double LETTERS = 13;
    private static final double SHARE = 0.6;
    private static final double MOST = 2;

    private Zoom() {}

    /** Of a window of that size, px; 1 in the smallest. */
    public static double of(double width, double height) {
        double larger = Math.min(width / LEAST_WIDTH, height / LEAST_HEIGHT) - 1;
        return Math.max(1, Math.min(MOST, 1 + SHARE * larger));
    }

    /** Of the window that a node is in; 1 while it is in none. */
    public static double of(Node node) {
        Scene scene = node.getScene();
        return scene == null ? 1 : of(scene.getWidth(), scene.getHeight());
    }

    /** Letters of a window follow its size; style sheets give all others in em. */
    public static void applyTo(Scene scene) {
        Runnable apply = () -> scene.getRoot()
                .setStyle(String.format(
                        Locale.ROOT, "-fx-font-size: %.2fpx;", LETTERS * of(scene.getWidth(), scene.getHeight())));
        scene.widthProperty().addListener((value, before, now) -> apply.run());
        scene.heightProperty().addListener((value, before, now) -> apply.run());
        apply.run();
    }

    /** Tells {@code listener} the zoom of a node's window, now and whenever it changes. */
    public static void follow(Node node, DoubleConsumer listener) {
        ChangeListener<Number> resized = (value, before, now) -> listener.accept(of(node));
        node.sceneProperty().addListener((value, before, now) -> {
            if (before != null) {
                before.widthProperty().removeListener(resized);
                before.heightProperty().removeListener(resized);
            }
            if (now != null) {
                now.widthProperty().addListener(resized);
                now.heightProperty().addListener(resized);
                listener.accept(of(node));
            }
        });
        listener.accept(of(node));
    }
}

package simmerpoint.viewer.canvas;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

/** How wide text gets in the window. Measuring takes longer than drawing, so that the last widths are kept; FX thread only. */
public final class FxMetrics {
    private static final int KEPT = 2000;

    private static final Map<Line, Double> WIDTHS = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Line, Double> eldest) {
            return size() > KEPT;
        }
    };

    private static final Text MEASURED = new Text();

    private FxMetrics() {}

    /** What is measured. */
    private record Line(String words, double size, boolean bold) {}

    static Font font(double size, boolean bold) {
        return bold ? Font.font(null, FontWeight.BOLD, size) : Font.font(size);
    }

    /** Width of a line, px. */
    public static double width(String words, double size, boolean bold) {
        return WIDTHS.computeIfAbsent(new Line(words, size, bold), FxMetrics::measured);
    }

    private static double measured(Line line) {
        MEASURED.setFont(font(line.size(), line.bold()));
        MEASURED.setText(line.words());
        return MEASURED.getLayoutBounds().getWidth();
    }
}

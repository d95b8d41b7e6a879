package simmerpoint.viewer.editing;

import javafx.scene.control.Slider;
import javafx.scene.input.MouseEvent;
import simmerpoint.scenario.keys.KeyRange;
import simmerpoint.units.TypedQuantity;

/**
 * A slider beside a number, in the number's own unit and in round steps, over what hand-built cookers have. One drag, or one stay with keys, is undone in one step.
 */
final class ValueSlider extends Slider {
    private static final double STEPS = 160;

    private final KeyModel model;
    private final KeyRange span;
    private boolean following;
    private double step = 1;
    private int decimals;
    private TypedQuantity like;

    ValueSlider(KeyModel model, KeyRange span) {
        this.model = model;
        this.span = span;
        setId("slider-" + model.key().path());
        setAccessibleText(KeyLabels.spoken(model.key()) + ", slider");
        setMinWidth(60);
        model.shownProperty().addListener((value, before, now) -> follow());
        model.otherwiseProperty().addListener((value, before, now) -> follow());
        valueProperty().addListener((value, before, now) -> slid(now.doubleValue()));
        addEventFilter(MouseEvent.MOUSE_PRESSED, e -> model.document().beginGesture());
        addEventFilter(MouseEvent.MOUSE_RELEASED, e -> model.document().endGesture());
        focusedProperty().addListener((value, before, now) -> {
            if (now) {
                model.document().beginGesture();
            } else {
                model.document().endGesture();
            }
        });
        follow();
    }

    /** Takes the place of the number that holds; at an end for one beyond it, and where it was for a wrong one. */
    private void follow() {
        following = true;
        model.quantity().ifPresentOrElse(this::stand, () -> measureIn(like == null ? model.usual() : like));
        following = false;
    }

    private void stand(TypedQuantity now) {
        measureIn(now);
        if (Math.abs(snapped(getValue()) - now.number()) > step * 1e-6) {
            setValue(Math.max(getMin(), Math.min(getMax(), now.number())));
        }
    }

    private void measureIn(TypedQuantity unit) {
        if (like == null || !like.unit().equals(unit.unit())) {
            scale(unit);
        }
        like = unit;
    }

    private void scale(TypedQuantity unit) {
        double low = unit.numberOf(span.low());
        double high = unit.numberOf(span.high());
        boolean whole = model.key().kind() == simmerpoint.scenario.keys.Key.Kind.COUNT;
        step = whole ? 1 : round((high - low) / STEPS);
        decimals = Math.max(0, -(int) Math.floor(Math.log10(step) + 1e-9));
        setMin(Math.ceil(low / step - 1e-6) * step);
        setMax(Math.floor(high / step + 1e-6) * step);
        setBlockIncrement(step);
        setMajorTickUnit(Math.max(step, (getMax() - getMin()) / 4));
    }

    /** The nearest of 1, 2, 5 times a power of ten. */
    private static double round(double size) {
        double ten = Math.pow(10, Math.floor(Math.log10(size)));
        double lead = size / ten;
        return (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10) * ten;
    }

    private double snapped(double value) {
        return Math.rint(value / step) * step;
    }

    private void slid(double value) {
        if (following || like == null) {
            return;
        }
        TypedQuantity next = like.withNumber(snapped(value), decimals);
        if (next.number() != like.number()) {
            model.enter(next.text());
        }
    }
}

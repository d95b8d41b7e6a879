package simmerpoint.heat.balance;

import org.apache.commons.math3.ode.events.EventHandler;

/** Ends an integration where one quantity of its state crosses a value, and records that it did. */
final class StopCondition implements EventHandler {
    private final int quantity;
    private final double value;
    private boolean reached;

    StopCondition(int quantity, double value) {
        this.quantity = quantity;
        this.value = value;
    }

    boolean reached() {
        return reached;
    }

    @Override
    public void init(double start, double[] y, double end) {}

    @Override
    public double g(double seconds, double[] y) {
        return y[quantity] - value;
    }

    @Override
    public Action eventOccurred(double seconds, double[] y, boolean increasing) {
        reached = true;
        return Action.STOP;
    }

    @Override
    public void resetState(double seconds, double[] y) {}
}

package simmerpoint.heat.balance;

import java.util.Arrays;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;

/** Commons Math's Dormand-Prince 5(4) for {@link HeatingEquations}, with one event to stop at and one for dryness. */
final class HeatingIntegrator {
    /** Share of the water at which a pan counts as dry. */
    static final double DRY_SHARE = 0.02;

    private static final double LEAST_STEP_SECONDS = 1e-9;
    private static final double MOST_STEP_SECONDS = 3600;
    private static final double EVENT_CHECK_SECONDS = 600;
    private static final double EVENT_ACCURACY_SECONDS = 1e-7;
    private static final int EVENT_STEPS = 200;

    /** Errors allowed in a step: K, kg, then J. */
    private static final double[] ABSOLUTE = {1e-8, 1e-10, 1e-2, 1e-2, 1e-2, 1e-2, 1e-2};

    private static final double RELATIVE = 1e-9;

    private final DormandPrince54Integrator integrator;

    HeatingIntegrator() {
        double[] relative = new double[ABSOLUTE.length];
        Arrays.fill(relative, RELATIVE);
        integrator = new DormandPrince54Integrator(LEAST_STEP_SECONDS, MOST_STEP_SECONDS, ABSOLUTE, relative);
    }

    void stopAt(EventHandler event) {
        integrator.addEventHandler(event, EVENT_CHECK_SECONDS, EVENT_ACCURACY_SECONDS, EVENT_STEPS);
    }

    void watch(StepHandler handler) {
        integrator.addStepHandler(handler);
    }

    /** Integrates from {@code start} to {@code end} or an event and returns that time; {@code y} becomes the state there. */
    double run(HeatingEquations equations, double start, double[] y, double end) {
        return integrator.integrate(equations, start, y, end, y);
    }
}

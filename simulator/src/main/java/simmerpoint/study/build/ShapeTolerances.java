package simmerpoint.study.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.PanelSize;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.dish.shape.ShapeError;
import simmerpoint.dish.shape.ShapeErrors;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.build.ShapeTolerance.Place;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * Tolerances of a whole dish in millimetres: of its shape, and of panels set askew and mirror that is wavy. Each is added to what the
 * scenario has of it already. What is random is told as two standard deviations, as a builder means a "±".
 */
public final class ShapeTolerances {
    /** Waves are measured over a ruler of this length, m. */
    public static final double RULER = 0.2;

    private static final ErrorSizeSearch SEARCH = new ErrorSizeSearch(ShapeTolerance.LOSS, 0.004, 0.0001, 0.03, 6);
    private static final double DEVIATIONS = 2;

    private static final Map<ShapeError, Place> OF_SHAPE = Map.of(
            ShapeError.SHEET_SAG, Place.SHEET_HANGING,
            ShapeError.SHEET_BULGE, Place.SHEET_BULGING,
            ShapeError.SPRINGBACK, Place.DEPTH,
            ShapeError.TWIST, Place.TWIST,
            ShapeError.RIM_PULLED_IN, Place.RIM);

    /** One that is looked for. */
    private record Wanted(Place place, double span, DoubleFunction<Scenario> error) {}

    private ShapeTolerances() {}

    /**
     * Those that mean something for the dish of a scenario.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static List<ShapeTolerance> of(Scenario scenario, TraceOptions options, Progress progress) {
        Scenario average = overGluings(scenario);
        List<Wanted> wanted = wanted(average);
        if (wanted.isEmpty()) {
            return List.of();
        }
        List<Double> found =
                SEARCH.find(average, wanted.stream().map(Wanted::error).toList(), options.withPrecision(0), progress);
        return IntStream.range(0, found.size())
                .mapToObj(k -> new ShapeTolerance(
                        wanted.get(k).place, wanted.get(k).span, found.get(k), found.get(k) >= SEARCH.most()))
                .toList();
    }

    private static List<Wanted> wanted(Scenario scenario) {
        List<Wanted> all = new ArrayList<>();
        for (ShapeError error : ShapeError.values()) {
            if (OF_SHAPE.containsKey(error) && has(scenario.dish().cut(), error)) {
                all.add(new Wanted(OF_SHAPE.get(error), 0, metres -> shaped(scenario, error, metres)));
            }
        }
        Optional<PanelSize> panel = scenario.dish().largestPanel();
        // Random turns of panels and waves of the mirror do the same to the mean.
        if (!scenario.dish().cut().has(CutTrait.PANELS)) {
            all.add(new Wanted(Place.WAVES, RULER, metres -> wavy(scenario, angle(metres, RULER))));
        } else if (panel.isPresent() && panel.get().narrowestMetres() > 0) {
            double side = panel.get().narrowestMetres();
            all.add(new Wanted(Place.PANEL_SIDE, side, metres -> wavy(scenario, angle(metres, side))));
        }
        return all;
    }

    /** Not a part of a dish beside its axis: what is measured of it says its shape. */
    private static boolean has(Cut cut, ShapeError error) {
        return cut.has(error.trait()) && !cut.has(CutTrait.OWN_SIZE);
    }

    /**
     * The mean of all dishes glued so: over many gluings a panel's tilt is one more normal slope error of its mirror, so that no lucky
     * or unlucky dish decides.
     */
    private static Scenario overGluings(Scenario scenario) {
        Mirror mirror = scenario.mirror();
        return wavy(scenario.withMirror(mirror.withPanelTilt(0)), mirror.panelTiltRadians());
    }

    private static double angle(double metres, double span) {
        return metres / span / DEVIATIONS;
    }

    private static Scenario shaped(Scenario scenario, ShapeError error, double metres) {
        ShapeErrors shape = scenario.shape();
        return scenario.withShape(shape.with(error, shape.of(error) + metres));
    }

    private static Scenario wavy(Scenario scenario, double angle) {
        Mirror mirror = scenario.mirror();
        return scenario.withMirror(mirror.withSlopeError(Math.hypot(mirror.slopeErrorRadians(), angle)));
    }
}

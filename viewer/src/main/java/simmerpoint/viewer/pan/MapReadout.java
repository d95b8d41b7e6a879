package simmerpoint.viewer.pan;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.FryingWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.map.Facing;
import simmerpoint.drawing.map.MapFrame;
import simmerpoint.drawing.map.Place;
import simmerpoint.pan.Pan;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.units.UnitSystem;

/** What a map says in words: the flux at a place, and how evenly the pan heats. */
final class MapReadout {
    private static final double HALF_A_MILLIMETRE = 5e-4;
    private static final double EIGHTH = Math.PI / 8;

    private final TraceResult result;
    private final FigureFormat figures;
    private final MoveWords lengths;
    private final TargetWords words;

    MapReadout(TraceResult result, UnitSystem units) {
        this.result = result;
        figures = new FigureFormat(units);
        lengths = new MoveWords(units);
        words = TargetWords.of(result.scenario().target());
    }

    /** For instance "1.2 cm away from the sun, 3.4 cm right: 41.2 ± 0.6 kW/m²". */
    String plane(Place place) {
        double radius = result.scenario().target().radiusMetres();
        boolean beside = Math.hypot(place.first(), place.second()) > radius;
        return (beside ? "beside the " + words.noun() + ", " : "") + where(place) + ": "
                + flux(result.maps().crossing(), place);
    }

    private String where(Place place) {
        List<String> parts = new ArrayList<>();
        along(place.first(), words.towardsPlusX(), words.towardsMinusX(), parts);
        along(place.second(), "right", "left", parts);
        return parts.isEmpty() ? "in the middle" : String.join(", ", parts);
    }

    private void along(double metres, String plus, String minus, List<String> parts) {
        if (Math.abs(metres) >= HALF_A_MILLIMETRE) {
            parts.add(lengths.alone(Math.abs(metres)) + " " + (metres > 0 ? plus : minus));
        }
    }

    /** For instance "4.1 cm up the wall, away from the sun, right: 2.1 ± 0.2 kW/m²". */
    String wall(FluxMap wall, Place place) {
        double angle =
                Math.IEEEremainder(place.first() / result.scenario().target().radiusMetres(), 2 * Math.PI);
        List<String> sides = new ArrayList<>();
        if (Math.abs(angle) < 3 * EIGHTH) {
            sides.add(words.towardsPlusX());
        } else if (Math.abs(angle) > 5 * EIGHTH) {
            sides.add(words.towardsMinusX());
        }
        if (Math.abs(angle) >= EIGHTH && Math.abs(angle) <= 7 * EIGHTH) {
            sides.add(angle > 0 ? "right" : "left");
        }
        return lengths.alone(place.second()) + " up the wall, " + String.join(", ", sides) + ": " + flux(wall, place);
    }

    private String flux(FluxMap map, Place place) {
        MapFrame frame = MapFrame.in(map, Facing.FIRST_DOWN, 0, 0, 1, 1);
        int cell = frame.row(place) * map.columns() + frame.column(place);
        return figures.flux(new Estimate(map.flux()[cell], map.standardError()[cell]));
    }

    /** The figure of evenness alone. */
    String briefEvenness() {
        Estimate evenness = result.spot().evenness();
        return result.ledger().caught().value() > 0 && Double.isFinite(evenness.value())
                ? "Unevenness " + percent(evenness) + "."
                : "No light is caught.";
    }

    private static String percent(Estimate evenness) {
        return Math.round(100 * evenness.value()) + "\u00a0%";
    }

    /** How evenly the pan heats, in the words of the answer, with the figure behind them. */
    String evenness() {
        Estimate evenness = result.spot().evenness();
        boolean lit = result.ledger().caught().value() > 0 && Double.isFinite(evenness.value());
        if (!lit || !(result.scenario().target() instanceof Pan)) {
            return briefEvenness();
        }
        String figure = "unevenness " + percent(evenness);
        return "It heats " + FryingWords.heats(result) + " (" + figure + ").";
    }
}

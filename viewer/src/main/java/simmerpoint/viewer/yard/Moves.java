package simmerpoint.viewer.yard;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.cooker.YardPlace;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.KeyRange;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.setup.SideView.Place;
import simmerpoint.setup.Stand;
import simmerpoint.units.UnitSystem;

/**
 * From a movement of the hand to the value of a key, and back. In the side view, α the axis' elevation, pull-back goes along
 * (cos α, sin α), raise straight up, slide away from the sun; sun and dish go about the mount.
 *
 * <p>A sun that place and time put there is moved by changing the time of day ({@link SunTime}).
 */
final class Moves {
    private static final double LEAST_ELEVATION = Math.toRadians(1);

    private Moves() {}

    /** The value at a handle, m or rad. */
    static double value(Handle handle, Scenario scenario) {
        Stand stand = scenario.stand();
        return switch (handle) {
            case PULL_BACK -> stand.pullBackMetres();
            case RAISE -> stand.raiseMetres();
            case SLIDE -> stand.slideMetres();
            case TURN -> scenario.aim().turnUpRadians();
            case SUN -> scenario.sun().elevationRadians();
        };
    }

    /** The value after the hand has gone {@code from} one place of the yard {@code to} another; {@code start} is before that. */
    static double moved(Handle handle, Scenario start, Place from, Place to) {
        double level = to.towardsSunMetres() - from.towardsSunMetres();
        double up = to.heightMetres() - from.heightMetres();
        double elevation = start.sun().elevationRadians();
        double before = value(handle, start);
        return switch (handle) {
            case PULL_BACK -> before + level * Math.cos(elevation) + up * Math.sin(elevation);
            case RAISE -> before + up;
            case SLIDE -> before - level;
            case TURN, SUN -> before + angle(new YardPlace(start).mount(), from, to);
        };
    }

    /** Angle by which {@code to} is turned up from {@code from} about {@code middle}, −π to π. */
    private static double angle(Place middle, Place from, Place to) {
        double fx = from.towardsSunMetres() - middle.towardsSunMetres();
        double fy = from.heightMetres() - middle.heightMetres();
        double tx = to.towardsSunMetres() - middle.towardsSunMetres();
        double ty = to.heightMetres() - middle.heightMetres();
        return Math.atan2(fx * ty - fy * tx, fx * tx + fy * ty);
    }

    /** The nearest round value: 1 mm, 1/16 in or 0.1°. */
    static double snapped(Handle handle, double value, UnitSystem system) {
        double step = handle.isLength()
                ? system == UnitSystem.INCH ? system.shortUnitMetres() / 16 : 0.001
                : Math.toRadians(0.1);
        return Math.rint(value / step) * step;
    }

    /** What one press of an arrow key moves, m or rad. */
    static double step(Handle handle, UnitSystem system, boolean large) {
        if (handle.isLength()) {
            double small = system == UnitSystem.INCH ? system.shortUnitMetres() / 4 : 0.005;
            return large ? 8 * small + (system == UnitSystem.INCH ? 0 : 2 * small) : small;
        }
        double degrees = handle == Handle.SUN ? 1 : 0.1;
        return Math.toRadians(large ? 10 * degrees : degrees);
    }

    /** The nearest value that the key allows. */
    static double allowed(Handle handle, double value) {
        KeyRange range = Keys.find(handle.key()).orElseThrow().range();
        double low = handle == Handle.SUN ? LEAST_ELEVATION : range.low();
        return Math.max(low, Math.min(range.high(), value));
    }

    /** The value as it is typed in a file. */
    static String typed(Handle handle, double value, UnitSystem system) {
        if (!handle.isLength()) {
            return plain(Math.toDegrees(value), 3) + "°";
        }
        return system == UnitSystem.INCH
                ? plain(value / system.shortUnitMetres(), 4) + " in"
                : plain(value / 0.01, 3) + " cm";
    }

    private static String plain(double x, int decimals) {
        BigDecimal rounded =
                BigDecimal.valueOf(x).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** What is to be changed so that a handle's value becomes {@code value}. */
    static Map<String, String> change(Handle handle, Scenario start, double value, UnitSystem system) {
        if (handle == Handle.SUN && SunTime.rules(start)) {
            return Map.of(SunTime.KEY, SunTime.of(start, value));
        }
        return Map.of(handle.key(), typed(handle, value, system));
    }

    /** The value for people: "Pull-back 3 cm", "Lowered 2 cm", "Dish turned down 6.3°". */
    static String words(Handle handle, Scenario scenario, UnitSystem system) {
        double value = value(handle, scenario);
        OffPlace words = new OffPlace(system);
        String moved = switch (handle) {
            case PULL_BACK -> pullBack(value, system);
            case RAISE -> words.raised(value);
            case SLIDE -> words.slid(value);
            case TURN -> OffPlace.turned(value).isEmpty() ? "Dish not turned" : "Dish " + OffPlace.turned(value);
            case SUN -> handle.title() + " " + plain(Math.toDegrees(value), 1) + "°" + clock(scenario);
        };
        return moved.isEmpty()
                ? handle.title() + " 0" + FigureFormat.NBSP + system.shortUnit()
                : moved.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + moved.substring(1);
    }

    /** With its sign, since slider and curve have it too. */
    private static String pullBack(double value, UnitSystem system) {
        if (new OffPlace(system).pulled(value).isEmpty()) {
            return "";
        }
        String figure = Handle.PULL_BACK.title() + " " + new FigureFormat(system).length(value);
        return value < 0 ? figure + ", towards the dish" : figure;
    }

    private static String clock(Scenario scenario) {
        return SunTime.rules(scenario) ? " at " + SunTime.now(scenario) : "";
    }
}

package simmerpoint.scenario.checks;

import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mirror.Material;
import simmerpoint.dish.mirror.MaterialCatalogue;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.setup.Stand;
import simmerpoint.setup.StandGeometry;
import simmerpoint.sun.SolarDisc;
import simmerpoint.sun.SunDay;
import simmerpoint.units.QuantityWriter;

/** What is allowed and yet probably not meant, one sentence each. */
final class PlausibilityChecks {
    private static final double STRONGEST_USUAL_BEAM = 1100;
    private static final double DEEP = 0.25;
    private static final double NEARLY_LEVEL = Math.toRadians(15);
    private static final double LOWERED = 0.15;
    private static final double SCRATCH = 0.01;
    private static final double LOW_SUN = Math.toRadians(10);
    private static final double THINNEST_SHEET = 5e-5;
    private static final double THICKEST_SHEET = 0.025;
    private static final double FARTHEST_NOON = 3.6;
    private final Scenario scenario;
    private final List<String> said = new ArrayList<>();

    private PlausibilityChecks(Scenario scenario) {
        this.scenario = scenario;
    }

    /** All of them; without a moment the height of the sun, and so of the pan, is not known. */
    static List<String> of(Scenario scenario, boolean timeless) {
        PlausibilityChecks warnings = new PlausibilityChecks(scenario);
        warnings.dish();
        warnings.place();
        if (!timeless) {
            warnings.shell();
        }
        if (!timeless && scenario.cooking().isPresent()) {
            warnings.height();
            warnings.lowerEdge();
        }
        warnings.sun();
        warnings.mirror();
        warnings.said.addAll(DishPlausibility.of(scenario.dish()));
        warnings.said.addAll(ValuePlausibility.of(scenario));
        scenario.cooking().ifPresent(warnings::pan);
        scenario.site().ifPresent(warnings::clock);
        return List.copyOf(warnings.said);
    }

    private void dish() {
        DishPlan dish = scenario.dish();
        double share = dish.focalLengthMetres() / dish.diameterMetres();
        if (share < DEEP) {
            said.add("dish.focal-length: the dish is very deep: its rim reaches beyond the focus, light comes from the"
                    + " sides and from above, and hands get into the beam easily");
        }
        double image = SolarDisc.MEAN_WIDTH_RADIANS * dish.focalLengthMetres();
        if (image > 2 * scenario.target().radiusMetres()) {
            said.add("dish.focal-length: the sun's image alone is " + QuantityWriter.length(image)
                    + " wide, wider than what it is meant to hit");
        }
    }

    /** The lowest point of the leaning underside against the plane of the rim, along the axis. */
    private void place() {
        DishPlan dish = scenario.dish();
        Stand stand = scenario.stand();
        double elevation = scenario.sun().elevationRadians();
        double rim = dish.profile().height(dish.aperture().reach());
        double middle = dish.supposedFocus().z()
                + stand.pullBackMetres()
                + stand.raiseMetres() * Math.sin(elevation)
                + stand.slideMetres() * Math.cos(elevation);
        boolean leansAsPan = scenario.target() instanceof Pan;
        double lean = leansAsPan ? Math.cos(elevation) * scenario.target().radiusMetres() : 0;
        if (middle - lean < rim) {
            said.add("stand: the underside of the pan is " + QuantityWriter.length(rim - middle + lean)
                    + " below the rim of the dish; turning the dish under it will be awkward");
        }
    }

    /** A shell beside its axis may light the pan from the side, where half of the light goes over or under the edge of its bottom. */
    private void shell() {
        if (!(scenario.dish().cut() instanceof OffAxisShell shell) || !(scenario.target() instanceof Pan pan)) {
            return;
        }
        double elevation = scenario.sun().elevationRadians();
        Vec light = scenario.dish().supposedFocus().minus(scenario.dish().middle());
        double from = rising(light, elevation);
        if (Math.abs(from) < NEARLY_LEVEL && scenario.stand().raiseMetres() > -LOWERED * pan.heightMetres()) {
            double other = rising(new Vec(-light.x(), light.y(), light.z()), elevation);
            said.add("stand.raise: the shell's light comes to the pan nearly level, "
                    + QuantityWriter.degrees(Math.abs(from))
                    + (from < 0 ? " from above" : " from below")
                    + ", and half of it misses the wall; look for a better place of the pan (pan), or turn the shell over (near-end: "
                    + (shell.nearEndUp() ? "down" : "up")
                    + "), so that it comes " + QuantityWriter.degrees(other) + " from below");
        }
    }

    /** How steeply light rises that goes that way in the dish frame, rad. */
    private static double rising(Vec way, double elevation) {
        double up = way.x() * Math.cos(elevation) + way.z() * Math.sin(elevation);
        return Math.asin(up / way.length());
    }

    private void height() {
        double height = scenario.panHeightMetres();
        double lowest = scenario.heights().lowestPanMetres();
        double highest = scenario.heights().highestPanMetres();
        if (height > highest) {
            said.add("stand: the pan stands too high to cook at, above " + centimetres(highest) + " ("
                    + centimetres(height) + " above the ground)");
        }
        if (height < lowest) {
            said.add("stand: the pan stands too low to cook at, below " + centimetres(lowest) + " ("
                    + centimetres(height) + " above the ground)");
        }
    }

    private void lowerEdge() {
        StandGeometry geometry = scenario.standGeometry();
        if (geometry.clearanceMetres() < -SCRATCH) {
            said.add("stand.tripod-height: with the mount "
                    + centimetres(scenario.heights().tripodHeightMetres())
                    + " up the dish's lower edge is " + centimetres(-geometry.clearanceMetres())
                    + " in the ground; with the sun "
                    + QuantityWriter.degrees(scenario.sun().elevationRadians())
                    + " high it takes at least "
                    + (int) Math.ceil(100 * geometry.leastMountMetres()) + " cm");
        }
    }

    private static String centimetres(double metres) {
        return Math.round(100 * metres) + " cm";
    }

    private void sun() {
        if (timed() && scenario.sun().beamWattsPerSquareMetre() > STRONGEST_USUAL_BEAM) {
            said.add(
                    "sky: more than 1100 W/m² of direct sunlight is rare even on high mountains; measure it (sky.beam), or take a"
                            + " hazier sky.setting");
        }
        if (scenario.sun().elevationRadians() < LOW_SUN) {
            said.add((timed() ? "when" : "sun.elevation")
                    + ": with the sun so low the dish points along the ground, and most of the light meets the"
                    + " wall of a level pan or nothing");
        }
    }

    private boolean timed() {
        return scenario.site().map(SiteConditions::timed).orElse(false);
    }

    /** The sheet that the pan's mass makes. Common practice: foil trays 0.1 mm, cast iron 5 mm. */
    private void pan(CookingSetup cooking) {
        double sheet = cooking.vessel().sheetThickness();
        if (sheet < THINNEST_SHEET || sheet > THICKEST_SHEET) {
            said.add("pan.mass: all of the pan would be " + QuantityWriter.length(sheet)
                    + " thick; check mass and material");
        }
    }

    /** Noon by the clock may be three hours off the sun's in real zones; half a day off is east taken for west. */
    private void clock(SiteConditions site) {
        ZonedDateTime noon = SunDay.of(site.place(), site.when().toLocalDate()).solarNoon();
        double hours = noon.toLocalTime().toSecondOfDay() / 3600.0;
        if (Math.abs(hours - 12) > FARTHEST_NOON) {
            said.add("place: the sun would stand highest at "
                    + noon.toLocalTime().truncatedTo(ChronoUnit.MINUTES)
                    + " by this clock; check longitude (east or west) and zone");
        }
    }

    private void mirror() {
        Cut cut = scenario.dish().cut();
        boolean bent = cut instanceof BentStrips || cut instanceof Smooth;
        if (bent
                && MaterialCatalogue.find(scenario.mirror().material()).stream().anyMatch(Material::rigid)) {
            said.add("mirror.material: " + scenario.mirror().material()
                    + " is stiff glass that does not bend; take flat panels or tiles (dish.surface.cut), or film");
        }
        boolean noWidth = scenario.mirror().wideShare() > 0 && scenario.mirror().wideSpreadRadians() == 0;
        if (noWidth) {
            said.add("mirror.wide-spread: it is 0, so the wide share of the light is not spread at all");
        }
    }
}

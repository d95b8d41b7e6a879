package simmerpoint.answer.scenario;

import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.units.DecimalFormatter;
import simmerpoint.units.UnitSystem;

/** What a scenario says of pan, water, air, heat levels and heights, in a line each. */
record KitchenWords(CookingSetup kitchen, UnitSystem system) {
    private static final double QUART = 0.946352946;

    /** Water and air. */
    void addShort(SectionBuilder out) {
        out.figure("water", water()).figure("air", air());
    }

    void addTo(SectionBuilder out, GroundHeights ground, FigureFormat figures) {
        out.figure("vessel", vessel())
                .figure("water", water())
                .figure("air", air())
                .figure("heat levels", levels())
                .figure(
                        "heights",
                        "mount " + figures.length(ground.tripodHeightMetres()) + " above the ground, cooking from "
                                + figures.length(ground.lowestPanMetres()) + " to "
                                + figures.length(ground.highestPanMetres()));
    }

    private String vessel() {
        ThermalPan vessel = kitchen.vessel();
        return vessel.material().name() + ", "
                + (inch()
                        ? figure(vessel.massKilograms() / UnitSystem.POUND_KILOGRAMS, 1, "lb")
                        : figure(vessel.massKilograms(), "kg"))
                + (vessel.lidOn() ? " with its lid, lid on" : ", lid off") + "; takes up "
                + percent(vessel.underside().absorptance()) + " at the underside, "
                + percent(vessel.wetWall().absorptance()) + " at the wall, "
                + percent(vessel.lid().absorptance()) + " at the lid";
    }

    private String water() {
        double kilograms = kitchen.contents().waterKilograms();
        String amount = inch() ? figure(kilograms / QUART, 1, "qt") : figure(kilograms, "l");
        return amount + " at " + celsius(kitchen.contents().startCelsius()) + ", boils at "
                + celsius(kitchen.around().boilingCelsius());
    }

    private String air() {
        Surroundings around = kitchen.around();
        double wind = around.windMetresPerSecond();
        return celsius(around.airCelsius()) + ", wind "
                + (inch() ? figure(wind / UnitSystem.MILE_PER_HOUR, 1, "mph") : figure(wind, "m/s")) + ", humidity "
                + percent(around.relativeHumidity()) + ", "
                + OutdoorWords.altitude(around.altitudeMetres(), system) + " above the sea, under "
                + (around.openSky() ? "the open sky" : "cover");
    }

    private String levels() {
        HeatLevelThresholds levels = kitchen.levels();
        double simmer = kitchen.around().boilingCelsius() - levels.simmerKelvinBelowBoiling();
        return "keep warm from " + celsius(levels.holdCelsius()) + ", simmer from " + celsius(simmer)
                + ", boil from " + figure(levels.boilSteam(), "kg/(h\u00b7m\u00b2)") + " of steam, fast boil from "
                + figure(levels.fastBoilSteam(), "kg/(h\u00b7m\u00b2)");
    }

    private boolean inch() {
        return system == UnitSystem.INCH;
    }

    private String celsius(double celsius) {
        return inch()
                ? FigureFormat.fixed(celsius * 1.8 + 32, 0) + FigureFormat.NBSP + "\u00b0F"
                : figure(celsius, 1, "\u00b0C");
    }

    private static String percent(double share) {
        return FigureFormat.fixed(100 * share, 0) + FigureFormat.NBSP + "%";
    }

    /** Three digits that count, but none beyond the second after the point. */
    private static String figure(double x, String unit) {
        return figure(x, Math.abs(x) < 9.995 ? 2 : 1, unit);
    }

    private static String figure(double x, int decimals, String unit) {
        return DecimalFormatter.stripped(FigureFormat.fixed(x, decimals)) + FigureFormat.NBSP + unit;
    }
}

package simmerpoint.heat;

/**
 * Thresholds of the heat levels. The defaults:
 *
 * <table>
 * <caption>Borders of the heat levels</caption>
 * <tr><th>border</th><th>default</th><th>source</th></tr>
 * <tr><td>too cool, keep warm</td><td>settles at 60 °C</td><td>hot food is kept above 60 °C: World Health Organization,
 * Five keys to safer food, 2006 (from memory); local food codes say 57 to 65 °C and have the last word</td></tr>
 * <tr><td>keep warm, simmer</td><td>settles 6 K below local boiling</td><td>the water boiling test, version 4, fails a
 * simmer that falls farther (from memory)</td></tr>
 * <tr><td>simmer, boil</td><td>6 kg of steam an hour and m² of water</td><td>common practice: a stir of small
 * bubbles</td></tr>
 * <tr><td>boil, fast boil</td><td>20 kg of steam an hour and m² of water</td><td>common practice: a rolling boil</td></tr>
 * </table>
 *
 * <p>Steam means what boiling makes beyond the vapour of the surface just below boiling. Without a lid that vapour alone is
 * some 10 kg/(h·m²), so with it hot still water would count as boiling. Decided here.
 *
 * @param holdCelsius steady-state temperature at which food keeps hot, 30 to 100 °C
 * @param simmerKelvinBelowBoiling steady-state temperature of a simmer below boiling, 0 to 30 K
 * @param boilSteam steam at which boiling begins, kg/(h·m²), at least 0
 * @param fastBoilSteam steam at which fast boiling begins, kg/(h·m²), above {@code boilSteam}
 */
public record HeatLevelThresholds(
        double holdCelsius, double simmerKelvinBelowBoiling, double boilSteam, double fastBoilSteam) {
    /** The defaults above. */
    public static final HeatLevelThresholds USUAL = new HeatLevelThresholds(60, 6, 6, 20);

    /** Checks the borders and their order. */
    public HeatLevelThresholds {
        ArgumentChecks.within("holding temperature", holdCelsius, 30, 100, "°C");
        ArgumentChecks.within("simmer below boiling", simmerKelvinBelowBoiling, 0, 30, "K");
        ArgumentChecks.notNegative("steam of a boil", boilSteam, "kg/(h·m²)");
        if (!(fastBoilSteam > boilSteam)) {
            throw new IllegalArgumentException("steam of a fast boil " + fastBoilSteam
                    + " kg/(h·m²) is not above that of a boil, " + boilSteam + " kg/(h·m²)");
        }
    }
}

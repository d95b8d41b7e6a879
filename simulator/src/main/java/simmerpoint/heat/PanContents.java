package simmerpoint.heat;

/**
 * Contents of the pan. Stew, rice and beans in water count as water: their specific heat is 10 to 25 % lower (common
 * practice), so their times are somewhat overestimated.
 *
 * @param waterKilograms above 0
 * @param startCelsius temperature it starts at, 0 °C to 100 °C
 */
public record PanContents(double waterKilograms, double startCelsius) {
    /** Checks both. */
    public PanContents {
        ArgumentChecks.positive("water", waterKilograms, "kg");
        ArgumentChecks.within("start temperature", startCelsius, 0, 100, "°C");
    }

    /** Whether the pan holds it. */
    public boolean fitsIn(ThermalPan vessel) {
        return waterKilograms <= vessel.brimfulKilograms();
    }
}

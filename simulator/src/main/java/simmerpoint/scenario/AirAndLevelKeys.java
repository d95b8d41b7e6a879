package simmerpoint.scenario;

import static simmerpoint.units.Dimension.LENGTH;
import static simmerpoint.units.Dimension.SHARE;
import static simmerpoint.units.Dimension.SPEED;
import static simmerpoint.units.Dimension.STEAM;
import static simmerpoint.units.Dimension.TEMPERATURE;
import static simmerpoint.units.Dimension.TEMPERATURE_DIFFERENCE;

import java.util.List;

/** The keys of {@code air} and {@code heat-levels}. */
final class AirAndLevelKeys {
    static final String OPEN = "open";
    static final List<String> SKIES = List.of(OPEN, "covered");

    private static final Range RATE = Range.between(STEAM, "0 kg/(h·m²)", "1000 kg/(h·m²)");

    private AirAndLevelKeys() {}

    static List<Key> keys() {
        KeyMaker air = KeyMaker.in("air");
        KeyMaker levels = KeyMaker.in("heat-levels");
        return List.of(
                air.quantity(
                        TEMPERATURE,
                        "temperature",
                        "20 °C",
                        "20 °C",
                        Range.between(TEMPERATURE, "-30 °C", "60 °C"),
                        "Temperature of the air."),
                air.quantity(
                        SPEED,
                        "wind",
                        "1 m/s",
                        "1 m/s",
                        Range.between(SPEED, "0 m/s", "20 m/s"),
                        "Wind at the pan; behind a hedge about half of what a weather report says."),
                air.share(
                        "humidity",
                        "50 %",
                        "50 %",
                        Range.between(SHARE, "0", "1"),
                        "Share of the moisture that the air could hold."),
                air.word("sky", OPEN, SKIES, "Whether the pan faces the open clear sky, or a roof or cloud."),
                air.quantity(
                        LENGTH,
                        "altitude",
                        Key.FROM_PLACE,
                        "420 m",
                        OutdoorKeys.ALTITUDE,
                        "Height above the sea; higher up, water boils cooler."),
                levels.quantity(
                        TEMPERATURE,
                        "hold",
                        "60 °C",
                        "60 °C",
                        Range.between(TEMPERATURE, "30 °C", "100 °C"),
                        "Keep warm begins where the pan settles at this temperature."),
                levels.quantity(
                        TEMPERATURE_DIFFERENCE,
                        "simmer-below-boiling",
                        "6 K",
                        "6 K",
                        Range.between(TEMPERATURE_DIFFERENCE, "0 K", "30 K"),
                        "Simmer begins where the pan settles this much below local boiling."),
                levels.quantity(
                        STEAM,
                        "boil-steam",
                        "6 kg/(h·m²)",
                        "6 kg/(h·m²)",
                        RATE,
                        "Boil begins at this much steam an hour from each square metre of water."),
                levels.quantity(
                        STEAM,
                        "fast-boil-steam",
                        "20 kg/(h·m²)",
                        "20 kg/(h·m²)",
                        RATE,
                        "Fast boil begins at this much steam an hour from each square metre of water."));
    }
}

package simmerpoint.scenario;

import static simmerpoint.units.Dimension.ANGLE;
import static simmerpoint.units.Dimension.IRRADIANCE;
import static simmerpoint.units.Dimension.LENGTH;
import static simmerpoint.units.Dimension.NUMBER;

import java.util.Arrays;
import java.util.List;
import simmerpoint.sun.AirType;

/** The keys of {@code place}, {@code when} and {@code sky}. */
final class OutdoorKeys {
    static final String CLEAR = "clear";
    static final String MEASURED = "measured";
    static final List<String> KINDS = List.of(CLEAR, MEASURED);
    static final Range ALTITUDE = Range.between(LENGTH, "-500 m", "9000 m");

    private OutdoorKeys() {}

    static List<Key> keys() {
        KeyMaker place = KeyMaker.in("place");
        KeyMaker when = KeyMaker.in("when");
        KeyMaker sky = KeyMaker.in("sky");
        return List.of(
                place.onEarth(
                        Key.Kind.LATITUDE,
                        "latitude",
                        "47.3° N",
                        Range.between(ANGLE, "-90°", "90°"),
                        "How far north of the equator; negative or S for south."),
                place.onEarth(
                        Key.Kind.LONGITUDE,
                        "longitude",
                        "8.5° E",
                        Range.between(ANGLE, "-180°", "180°"),
                        "How far east of Greenwich; negative or W for west."),
                place.length("altitude", "0 m", "420 m", ALTITUDE, "Height above the sea."),
                place.plain(
                        Key.Kind.ZONE,
                        "zone",
                        null,
                        "UTC+1",
                        "Zone of the clock: a name, which knows about summer time, or hours from UTC, which never change."),
                when.plain(Key.Kind.DATE, "date", null, "2026-06-21", "Day for which the sun is looked up."),
                when.plain(
                        Key.Kind.TIME,
                        "time",
                        "12:00",
                        "09:30",
                        "Time by the clock of the place; where the clock shows it twice, the first is meant."),
                sky.word("kind", CLEAR, KINDS, "Whether the sunlight is taken from usual clear air or was measured."),
                sky.onlyFor(CLEAR).word("setting", AirType.RURAL.word(), settings(), "What sort of air the place has."),
                sky.onlyFor(CLEAR)
                        .quantity(
                                NUMBER,
                                "turbidity",
                                Key.FROM_SETTING,
                                "3.2",
                                Range.between(NUMBER, "1", "20"),
                                "Linke turbidity of the air instead of a setting: 2 very clear, 3 usual, 5 hazy."),
                sky.onlyFor(MEASURED)
                        .quantity(
                                IRRADIANCE,
                                "beam",
                                null,
                                "850 W/m²",
                                Range.above(IRRADIANCE, "0 W/m²", "1500 W/m²"),
                                "Direct sunlight, measured facing the sun at the time of when."));
    }

    private static List<String> settings() {
        return Arrays.stream(AirType.values()).map(AirType::word).toList();
    }
}

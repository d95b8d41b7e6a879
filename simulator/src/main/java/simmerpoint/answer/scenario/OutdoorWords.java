package simmerpoint.answer.scenario;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.sun.Site;
import simmerpoint.units.UnitSystem;

/** Place, time and sky of a scenario in a line each. */
final class OutdoorWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private OutdoorWords() {}

    static void addTo(SectionBuilder out, SiteConditions outdoors, FigureFormat figures) {
        out.figure("place", place(outdoors.place(), figures.system()))
                .figure(
                        "time",
                        Optional.of(outdoors)
                                .filter(SiteConditions::timed)
                                .map(o -> o.when().format(CLOCK) + ", sun and beam as then"))
                .figure("sky", OneLine.of(outdoors.sky().chosen().describe()));
    }

    private static String place(Site place, UnitSystem system) {
        return compass(place.latitudeRadians(), "N", "S") + ", " + compass(place.longitudeRadians(), "E", "W") + ", "
                + altitude(place.altitudeMetres(), system) + " above the sea, clock of " + place.zone();
    }

    private static String compass(double radians, String positive, String negative) {
        String degrees = FigureFormat.fixed(Math.abs(Math.toDegrees(radians)), 2);
        return degrees + "\u00b0" + FigureFormat.NBSP + (radians < 0 ? negative : positive);
    }

    /** A height above the sea, m, in whole metres or feet. */
    static String altitude(double metres, UnitSystem system) {
        return system == UnitSystem.INCH
                ? FigureFormat.fixed(metres / UnitSystem.FOOT_METRES, 0) + FigureFormat.NBSP + "ft"
                : FigureFormat.fixed(metres, 0) + FigureFormat.NBSP + "m";
    }
}

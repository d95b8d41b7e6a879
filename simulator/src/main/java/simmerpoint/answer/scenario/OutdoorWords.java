package simmerpoint.answer.scenario;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.sun.Site;
import simmerpoint.units.UnitSystem;

/** Place, time and sky of a scenario in a line each. */
final class OutdoorWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private OutdoorWords() {}

    static List<Item> items(SiteConditions outdoors, FigureFormat figures) {
        Item place = new Item.Figure("place", place(outdoors.place(), figures.system()));
        Item sky = new Item.Figure("sky", OneLine.of(outdoors.sky().chosen().describe()));
        if (!outdoors.timed()) {
            return List.of(place, sky);
        }
        return List.of(place, new Item.Figure("time", outdoors.when().format(CLOCK) + ", sun and beam as then"), sky);
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

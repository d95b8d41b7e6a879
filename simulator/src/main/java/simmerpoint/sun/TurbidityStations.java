package simmerpoint.sun;

import java.time.LocalDate;
import java.util.List;

/**
 * Usual Linke turbidity of any place, from the months of stations around it: the mean of them all, each with the weight 1 ÷
 * distance⁴, so that near ones decide. Of a station beyond the equator the year is shifted by six months.
 *
 * <p>Haze and water vapour, that is turbidity beyond the 1 of clean dry air, thin out with height as exp(−h ÷ {@value
 * #SCALE_HEIGHT} m): derived here from the yearly means of Table Mountain (2.6 at 1689 m) and Bondville (3.8 at 230 m), 1.6 ÷
 * 2.8 = exp(−1459 m ÷ 2600 m). The method is ours. The map behind the stations' figures has an error of 0.73 (Remund and others
 * 2003); far from all of them one to two units are possible.
 */
final class TurbidityStations {
    private static final MonthlyTable TABLE = MonthlyTable.read("turbidity-stations.tsv");
    private static final List<Station> ALL =
            TABLE.keys().stream().map(TurbidityStations::station).toList();
    private static final double SCALE_HEIGHT = 2600;
    private static final double EARTH_RADIUS_KILOMETRES = 6371;
    private static final int HALF_YEAR = 6;

    private record Station(double latitude, double longitude, double altitude, YearlyCurve months) {
        /** Turbidity beyond that of clean dry air, at sea level. */
        double haze(LocalDate date, Site site) {
            boolean across = site.southern() != (latitude < 0);
            return (months.on(across ? date.plusMonths(HALF_YEAR) : date) - 1) * Math.exp(altitude / SCALE_HEIGHT);
        }

        /** Great-circle distance, km, at least 1. */
        double kilometresTo(Site site) {
            double halfNorth = Math.sin((site.latitudeRadians() - latitude) / 2);
            double halfEast = Math.sin((site.longitudeRadians() - longitude) / 2);
            double square =
                    halfNorth * halfNorth + Math.cos(latitude) * Math.cos(site.latitudeRadians()) * halfEast * halfEast;
            return Math.max(1, 2 * EARTH_RADIUS_KILOMETRES * Math.asin(Math.min(1, Math.sqrt(square))));
        }
    }

    private TurbidityStations() {}

    private static Station station(String name) {
        return new Station(
                Math.toRadians(TABLE.number(name, "latitude")),
                Math.toRadians(TABLE.number(name, "longitude")),
                TABLE.number(name, "altitude"),
                YearlyCurve.throughMidMonths(TABLE.values(name)));
    }

    /** Usual turbidity at {@code site}. */
    static double usual(LocalDate date, Site site) {
        double sum = 0;
        double weights = 0;
        for (Station station : ALL) {
            double weight = Math.pow(station.kilometresTo(site), -4);
            sum += weight * station.haze(date, site);
            weights += weight;
        }
        return 1 + sum / weights * Math.exp(-site.altitudeMetres() / SCALE_HEIGHT);
    }

    /** Source of the figures. */
    static String source() {
        return TABLE.source(TABLE.keys().get(0));
    }
}

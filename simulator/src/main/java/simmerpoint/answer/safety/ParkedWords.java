package simmerpoint.answer.safety;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.safety.parked.OffAxis;
import simmerpoint.safety.parked.ParkedHour;
import simmerpoint.safety.parked.ParkedResult;
import simmerpoint.safety.parked.ParkedSpot;
import simmerpoint.safety.parked.ParkedWay;
import simmerpoint.safety.risk.Hazard;

/**
 * What a dish does that is left uncovered, in words.
 *
 * @param result what was found
 * @param figures in the reader's units
 */
record ParkedWords(ParkedResult result, FigureFormat figures) {
    private static final String REST = "overed, or laid face down, it throws no light at all";
    private static final String BEST = "C" + REST;
    private static final String BEST_LOWER = "c" + REST;

    /** The one sentence of the short answer. */
    String brief() {
        return "Turned away is not covered: " + stillAt(30) + ". " + BEST + ".";
    }

    /** "with the sun 30° off its axis there are still 29 kW/m²". */
    private String stillAt(double degrees) {
        OffAxis off = result.offAxis().stream()
                .filter(each -> Math.toDegrees(each.radians()) > degrees - 0.5)
                .findFirst()
                .orElseThrow();
        return "with the sun " + figures.degrees(off.radians()) + " off its axis there are still "
                + figures.roughFlux(off.spot().flux()) + " in places";
    }

    Section section() {
        return Section.headed("Left uncovered")
                .add(table())
                .say(turnedAway())
                .say(result.best()
                        .map(best -> safest(best))
                        .orElse(BEST + ". Name a place to see what it does through a day"
                                + " (place in the scenario)."))
                .say(result.ways().stream().map(this::way).collect(Collectors.toList()))
                .build();
    }

    private Item table() {
        return Columns.<OffAxis>none()
                .with("sun off\nthe axis", each -> figures.degrees(each.radians()))
                .with("hottest,\nkW/m\u00b2", each -> kilowatts(each.spot().flux()))
                .with(
                        "height of\nit, " + unit(),
                        each -> length(each.spot().place().z()))
                .with(
                        "wood smoulders\nup to, " + unit(),
                        each -> length(each.spot().smoulderReach()))
                .with("ground,\nkW/m\u00b2", each -> kilowatts(each.spot().groundFlux()))
                .with("stand,\nkW/m\u00b2", each -> kilowatts(each.spot().standFlux()))
                .with("wall at\n" + wall(), each -> kilowatts(each.spot().wallFlux()))
                .table(result.offAxis());
    }

    private String wall() {
        return figures.length(ParkedSpot.WALL_METRES, 2);
    }

    private String unit() {
        return figures.system().shortUnit();
    }

    private static String kilowatts(double flux) {
        return flux > 0 ? FigureFormat.rounded(flux / 1000, 2) : "\u2013";
    }

    private String length(double metres) {
        return metres > 0
                ? FigureFormat.fixed(Math.ceil(metres / figures.system().shortUnitMetres()), 0)
                : "\u2013";
    }

    private String turnedAway() {
        Optional<OffAxis> from = result.harmlessFrom(Hazard.SMOULDER.wattsPerSquareMetre());
        return from.map(off -> "Turned away, it is below what makes wood smoulder only from about "
                        + figures.degrees(off.radians()) + " on. Distances are level from under the mount.")
                .orElse(
                        "However it is turned within 75\u00b0, wood can smoulder in its light somewhere. Distances are level"
                                + " from under the mount.");
    }

    private String safest(ParkedWay best) {
        String worst = best.worst()
                .map(hour ->
                        "at worst " + figures.roughFlux(Math.max(hour.spot().flux(), 0)) + ", "
                                + TimeWords.date(hour.time().toLocalDate()) + " at " + TimeWords.clock(hour.time()))
                .orElse("with no sun on it");
        return "Safest: " + BEST_LOWER + ". If neither can be, " + how(best) + " does least (" + worst + ").";
    }

    private String how(ParkedWay way) {
        return switch (way.parking()) {
            case AS_AIMED -> "leaving it as it was aimed";
            case ON_ITS_BACK -> "laying it on its back";
            case FACING_AWAY -> "standing it upright, facing " + (way.azimuthRadians() > 1 ? "south" : "north") + ",";
        };
    }

    /** "As it was aimed (…): …". */
    private String way(ParkedWay way) {
        String name = switch (way.parking()) {
            case AS_AIMED -> "Left as it was aimed";
            case ON_ITS_BACK -> "On its back";
            case FACING_AWAY -> "Upright, facing away from the noon sun";
        };
        LocalDate date = result.date().orElseThrow();
        List<ParkedHour> burning = way.burning(date);
        String day = burning.isEmpty()
                ? "nowhere above " + figures.roughFlux(Hazard.TINDER.wattsPerSquareMetre()) + " on "
                        + TimeWords.date(date)
                : "on " + TimeWords.date(date) + " dry leaves can catch fire from "
                        + TimeWords.clock(burning.get(0).time()) + " to "
                        + TimeWords.clock(burning.get(burning.size() - 1).time());
        return name + ": " + day + way.worst().map(this::worst).orElse("") + "." + elsewhere(way);
    }

    /** " At most 2.4 kW/m² on the ground (…), 3 kW/m² on a wall 1 m from under the mount (…)." */
    private String elsewhere(ParkedWay way) {
        List<String> parts = new ArrayList<>();
        most(way, ParkedSpot::groundFlux, "on the ground").ifPresent(parts::add);
        most(way, ParkedSpot::wallFlux, "on a wall " + wall() + " from under the mount")
                .ifPresent(parts::add);
        most(way, ParkedSpot::standFlux, "on the pan\u2019s stand").ifPresent(parts::add);
        return parts.isEmpty() ? "" : " At most " + String.join(", ", parts) + ".";
    }

    private Optional<String> most(ParkedWay way, ToDoubleFunction<ParkedSpot> flux, String where) {
        return way.worstBy(flux)
                .map(hour -> figures.roughFlux(flux.applyAsDouble(hour.spot())) + " " + where + " ("
                        + TimeWords.date(hour.time().toLocalDate()) + ", " + TimeWords.clock(hour.time()) + ")");
    }

    private String worst(ParkedHour hour) {
        if (!(hour.spot().flux() > Hazard.SMOULDER.wattsPerSquareMetre())) {
            return "";
        }
        Hazard hazard = Hazard.ofFire(hour.spot().flux()).orElseThrow();
        return "; at worst " + figures.roughFlux(hour.spot().flux()) + " ("
                + TimeWords.date(hour.time().toLocalDate()) + ", " + TimeWords.clock(hour.time()) + ", "
                + figures.length(hour.spot().place().z(), 2) + " above the ground): " + Cautions.does(hazard);
    }
}

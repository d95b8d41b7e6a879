package simmerpoint.scenario.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.sun.MaximumBeam;
import simmerpoint.units.QuantityWriter;

/** Single values that can be traced and yet look like a slip, one sentence each. */
final class ValuePlausibility {
    private static final double FAR_OFF = Math.toRadians(5);
    private static final double ROUGH = 0.05;
    private static final double DUSTY = 0.3;
    private static final double WIDE_PAN = 0.6;
    private static final double HIGH_PAN = 1.5;
    private static final double STRONGEST_USUAL = 1100;
    private static final double THIMBLE = 0.02;

    /** How far off a good meter may read: common practice. */
    private static final double READING = 0.03;

    private final Scenario scenario;
    private final List<String> said = new ArrayList<>();

    private ValuePlausibility(Scenario scenario) {
        this.scenario = scenario;
    }

    static List<String> of(Scenario scenario) {
        ValuePlausibility odd = new ValuePlausibility(scenario);
        odd.moves();
        odd.aim();
        odd.mirror();
        odd.pan();
        odd.beam();
        return odd.said;
    }

    private void moves() {
        Stand stand = scenario.stand();
        Map<String, Double> moves = new TreeMap<>(Map.of(
                "pull-back", stand.pullBackMetres(),
                "slide", stand.slideMetres(),
                "raise", stand.raiseMetres(),
                "side", stand.sideMetres()));
        double width = 2 * scenario.target().radiusMetres();
        moves.forEach((name, metres) -> {
            if (Math.abs(metres) > width) {
                said.add("stand." + name + ": " + QuantityWriter.length(metres)
                        + " is more than the width of "
                        + (scenario.target() instanceof Pan ? "the pan, " : "the disc, ")
                        + QuantityWriter.length(width) + "; little light may reach it");
            }
        });
    }

    private void aim() {
        Aim aim = scenario.aim();
        off("aim.turn", aim.turnUpRadians(), aim.turnSideRadians(), "the dish points");
        off("aim.drift", aim.driftUpRadians(), aim.driftSideRadians(), "the sun has moved");
    }

    private void off(String key, double up, double side, String words) {
        double angle = Math.hypot(up, side);
        if (angle > FAR_OFF) {
            said.add(key + ": " + words + " " + QuantityWriter.degrees(angle)
                    + " off; beyond 5° hardly any light reaches the pan");
        }
    }

    private void mirror() {
        double slope = scenario.mirror().slopeErrorRadians();
        if (slope > ROUGH) {
            said.add("mirror.slope-error: " + QuantityWriter.milliradians(slope)
                    + " is rougher than crumpled foil; 5° is 87 mrad: was mrad meant?");
        }
        if (scenario.mirror().dust() > DUSTY) {
            said.add("mirror.dust: " + Math.round(100 * scenario.mirror().dust())
                    + " % of the light is a lot to lose to dust; 2 to 10 % is usual");
        }
    }

    private void pan() {
        if (!(scenario.target() instanceof Pan pan)) {
            return;
        }
        double wide = pan.diameterMetres();
        if (wide > WIDE_PAN * scenario.dish().diameterMetres()) {
            said.add("pan.diameter: the pan is " + QuantityWriter.length(wide) + " wide and the dish only "
                    + QuantityWriter.length(scenario.dish().diameterMetres())
                    + "; much of the mirror is in its shadow");
        }
        if (wide < THIMBLE) {
            said.add("pan.diameter: " + QuantityWriter.length(wide) + " is smaller than a thimble; check the unit");
        } else if (pan.heightMetres() > HIGH_PAN * wide) {
            said.add("pan.height: the pan is " + QuantityWriter.length(pan.heightMetres()) + " high and only "
                    + QuantityWriter.length(wide) + " wide; check both");
        }
    }

    /** A sky's own beam is believed: only a figure that somebody gave is held against the clearest air. */
    private void beam() {
        Optional<SiteConditions> timed = scenario.site().filter(SiteConditions::timed);
        if (timed.isPresent() && !timed.get().sky().others().isEmpty()) {
            return;
        }
        double elevation = scenario.sun().elevationRadians();
        double most = Math.min(STRONGEST_USUAL, MaximumBeam.wattsPerSquareMetre(elevation, altitude()));
        double beam = scenario.sun().beamWattsPerSquareMetre();
        if (beam > (1 + READING) * most) {
            said.add((timed.isPresent() ? "sky: " : "sun.beam: ") + Math.round(beam)
                    + " W/m² is more than even very clear air lets through with the sun "
                    + QuantityWriter.degrees(elevation)
                    + " high, about " + 10 * Math.round(most / 10) + " W/m² at most");
        }
    }

    private double altitude() {
        return scenario.site()
                .map(site -> site.place().altitudeMetres())
                .or(() -> scenario.cooking().map(cooking -> cooking.around().altitudeMetres()))
                .orElse(0.0);
    }
}

package simmerpoint.answer.trace;

import java.util.Locale;
import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.answer.words.HobWords;
import simmerpoint.answer.words.PointsWords;
import simmerpoint.answer.words.PowerWords;
import simmerpoint.answer.words.ShellWords;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.pan.Pan;
import simmerpoint.quantities.OneLine;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Stand;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.Ledger;
import simmerpoint.target.Spot;

/**
 * What a cook asks first: how many watts, where they land, how evenly, and what eats the rest.
 *
 * @param result what was traced
 * @param figures in the reader's units
 * @param words for what the light falls on
 * @param hint where to read on about the pan's place
 */
record CookSection(TraceResult result, FigureFormat figures, TargetWords words, String hint) {
    /** A peak less sure than this share of itself is not told as a fact. */
    private static final double VAGUE = 0.25;

    /** So little light is none, W. */
    private static final double NOTHING = 0.05;

    Section section() {
        SectionBuilder out = Section.headed("What the " + words.noun() + " gets");
        if (!hasLight()) {
            out.say(dark() + "." + takenUp());
        } else {
            out.say(watts()).say(heat());
            if (words.isPan()) {
                out.say(place()).say(shell()).say(landing());
            }
            out.say(hottest()).say(aim());
        }
        return out.say(LargestLoss.of(result).sentence(figures)).build();
    }

    /** Whether any focused light is caught. */
    boolean hasLight() {
        return ledger().caught().value() > NOTHING;
    }

    /** What to say where there is none. */
    String dark() {
        return "No light from the mirrors reaches the " + words.noun();
    }

    /** "about 470 W (four in five such cookers: 400 to 540 W) go into the water". */
    String power() {
        return new PowerWords(result.heat(), figures.system()).inShort(result.likely(), result.useful());
    }

    private Ledger ledger() {
        return result.ledger();
    }

    private String watts() {
        PowerWords power = new PowerWords(result.heat(), figures.system());
        String gets = result.likely()
                .map(likely -> power.sentence(likely.power(), result.useful()))
                .orElseGet(() -> power.sentence(result.useful()));
        if (!(result.scenario().target() instanceof Pan pan)) {
            return gets;
        }
        String hob = HobWords.sentence(result.likelyPower());
        return gets + (hob.isEmpty() ? "" : " " + hob) + " " + light(pan);
    }

    /** Where the pan's light comes from. */
    private String light(Pan pan) {
        return "The pan\u2019s outside (" + OneLine.of(pan.finish().name()) + otherFinishes(pan) + ") takes up "
                + figures.plainWatts(ledger().absorbed()) + " of light, from "
                + figures.plainWatts(ledger().caught()) + " of focused sunlight that reach it"
                + (ledger().directOnPan().value() > 0
                        ? " and " + figures.plainWatts(ledger().directOnPan())
                                + " that come straight from the sun onto lid and wall."
                        : ".");
    }

    private String otherFinishes(Pan pan) {
        double usual = pan.finish().absorptance();
        boolean mixed = result.scenario()
                .cooking()
                .map(CookingSetup::vessel)
                .filter(v -> v.underside().absorptance() != usual
                        || v.wetWall().absorptance() != usual
                        || v.lid().absorptance() != usual)
                .isPresent();
        return mixed ? ", some faces another finish" : "";
    }

    /** What the pan's water does with these watts; empty for a bare disc. */
    private Optional<String> heat() {
        return result.heat().map(found -> {
            HeatSentences heat = new HeatSentences(found, result.likely(), figures.system());
            return heat.boil() + " " + heat.levelSentence() + " (" + capital(heat.weather()) + ".)";
        });
    }

    private Optional<String> aim() {
        return result.aimAgainMinutes()
                .map(minutes -> "Aim again every " + SkyWords.minutes(minutes.value())
                        + ": by then a tenth of what a fresh aim gives is lost.");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Where the pan stands, from the focus and over the ground. */
    private String place() {
        Scenario scenario = result.scenario();
        double height = scenario.heights().tripodHeightMetres();
        StandGeometry geometry = scenario.standGeometry();
        String where =
                scenario.stand().equals(Stand.AT_FOCUS) ? "at the focus" : "off the focus, as the scenario has it";
        HeightWords heights = new HeightWords(scenario.heights(), figures);
        String reach = heights.beyond(geometry.panHeightMetres())
                .map(words -> " It stands " + words + ".")
                .orElse("");
        return "Its underside stands with its middle " + where + ", " + figures.length(geometry.panHeightMetres(), 2)
                + " above the ground and " + figures.length(geometry.distanceMetres(), 2)
                + " from the tripod towards the sun, if the dish turns about a point " + figures.length(height, 2)
                + " up." + reach
                + result.betterHeight()
                        .map(better -> " Set " + HeightWords.better(better, figures) + ".")
                        .orElse("")
                + hint;
    }

    /** Where the focus of a shell is and how that stands, or what measured points tell. */
    private Optional<String> shell() {
        return ShellWords.of(result.scenario(), figures)
                .map(ShellWords::focus)
                .or(() -> PointsWords.of(result.scenario(), figures).map(PointsWords::full));
    }

    private String takenUp() {
        return ledger().directOnPan().value() > 0
                ? " It takes up " + figures.plainWatts(ledger().absorbed()) + " all the same, from "
                        + figures.plainWatts(ledger().directOnPan())
                        + " that come straight from the sun onto lid and wall."
                : "";
    }

    private String landing() {
        return "Of the focused light that reaches the pan, " + share(ledger().underside())
                + " lands on the underside and " + share(ledger().wall()) + " falls on the wall"
                + (ledger().lid().value() > 0 ? "; " + share(ledger().lid()) + " falls on the lid" : "") + ".";
    }

    private String share(Estimate watts) {
        return figures.percent(watts.value() / ledger().caught().value());
    }

    /** "56.7 kW/m², in the middle: very uneven". */
    Optional<String> hotSpot() {
        Spot spot = result.spot();
        return spot.peakFlux().relativeError() > VAGUE
                ? Optional.empty()
                : Optional.of(figures.roughFlux(spot.peakFlux().value())
                        + place(Math.hypot(spot.peakX(), spot.peakY()))
                        + how(spot.evenness())
                                .map(how -> "; the heat is " + how)
                                .orElse(""));
    }

    private String hottest() {
        Spot spot = result.spot();
        double mean = spot.meanConcentration().value() * result.scenario().sun().beamWattsPerSquareMetre();
        double times = spot.peakFlux().value() / mean;
        if (times < 1 || spot.peakFlux().relativeError() > VAGUE) {
            return "Too few rays land there to tell its hottest spot: trace with more rays.";
        }
        String average = Double.isFinite(times)
                ? ": " + FigureFormat.rounded(times, 2) + " times the " + words.face() + "'s average"
                : "";
        String text = "The hottest spot of the " + words.face() + ", " + figures.length(2 * spot.peakDiscRadius(), 2)
                + " across, gets " + figures.plainFlux(spot.peakFlux())
                + place(Math.hypot(spot.peakX(), spot.peakY())) + average + ". " + evenness(spot.evenness());
        return text.strip();
    }

    private String place(double off) {
        if (!Double.isFinite(off)) {
            return "";
        }
        if (off < Math.max(0.002, result.scenario().target().radiusMetres() * 0.02)) {
            return ", in the middle";
        }
        return ", " + figures.length(off, 2) + " from the middle "
                + words.side(result.spot().peakX(), result.spot().peakY());
    }

    /** The bounds between the words are this project's own choice. */
    private static Optional<String> how(Estimate evenness) {
        return Optional.of(evenness.value())
                .filter(Double::isFinite)
                .map(value -> value < 0.3 ? "fairly even" : value < 0.8 ? "uneven" : "very uneven");
    }

    private String evenness(Estimate evenness) {
        return how(evenness)
                .map(how -> "The heat is " + how + ": it varies by " + figures.percent(evenness.value())
                        + " (standard deviation) of its average.")
                .orElse("");
    }
}

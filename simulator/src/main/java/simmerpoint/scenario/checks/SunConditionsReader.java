package simmerpoint.scenario.checks;

import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.sun.AirType;
import simmerpoint.sun.BeamRangeModel;
import simmerpoint.sun.EsraSky;
import simmerpoint.sun.LinkeTurbidity;
import simmerpoint.sun.Site;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.UsualBeam;
import simmerpoint.units.QuantityWriter;

/**
 * Makes the sun of a scenario out of {@code sun}, {@code place}, {@code when} and {@code sky}.
 *
 * <p>A measured beam ({@code sky.beam}, or {@code sun.beam} beside place and time) fixes how turbid the air is, so that the
 * rest of the day follows from the one measurement; it is taken at its word, without a range between models.
 */
final class SunConditionsReader {
    private static final String ELEVATION = "sun.elevation";
    private static final String BEAM = "sun.beam";

    private final ScenarioValues v;
    private final Problems problems;

    private SunConditionsReader(ScenarioValues values, Problems problems) {
        this.v = values;
        this.problems = problems;
    }

    /** The sun meant; whatever is wrong is added to the problems. */
    static SunConditions read(ScenarioValues values, Problems problems) throws ScenarioException {
        SunConditions light = new SunConditionsReader(values, problems).read();
        problems.throwIfAny();
        return light;
    }

    private SunConditions read() throws ScenarioException {
        if (!v.hasSection("place")) {
            needsPlace("when");
            needsPlace("sky");
            return asGiven(Optional.empty(), Optional.empty());
        }
        Site place = new Site(
                v.number("place.latitude"),
                v.number("place.longitude"),
                v.number("place.altitude"),
                v.zone("place.zone"));
        boolean doubled = v.has("sky.setting") && v.has("sky.turbidity");
        if (doubled) {
            tell("sky.turbidity", "setting and turbidity both say how clear the air is; keep one of them");
        }
        return v.hasSection("when") ? timed(place) : untimed(place);
    }

    private void needsPlace(String section) {
        if (v.hasSection(section)) {
            tell(
                    section,
                    "the sun cannot be looked up without a place; add place: {latitude: 47.3°, longitude: 8.5°, zone: UTC+1},"
                            + " or leave " + section + " out and give sun.elevation and sun.beam");
        }
    }

    private SunConditions asGiven(Optional<SiteConditions> site, Optional<Problem> timeless) {
        double elevation = v.number(ELEVATION);
        double altitude = v.number("air.altitude", v.hasSection("place") ? v.number("place.altitude") : 0);
        return new SunConditions(
                elevation, v.number(BEAM, UsualBeam.wattsPerSquareMetre(elevation, altitude)), site, timeless);
    }

    /** A place for days and years; a single moment then needs sun.elevation. */
    private SunConditions untimed(Site place) throws ScenarioException {
        if (v.text("sky.kind").equals("measured")) {
            tell("sky.beam", "when was it measured? add when: {date: 2026-06-21, time: 09:30}");
        }
        problems.throwIfAny();
        SiteConditions site = new SiteConditions(place, SiteConditions.standIn(place), clear(), false);
        Problem timeless = new Problem(
                v.line("place"),
                "place",
                "a place alone does not say where the sun stands; add when: {date: 2026-06-21, time: 09:30}, or"
                        + " sun.elevation");
        return asGiven(Optional.of(site), v.has(ELEVATION) ? Optional.empty() : Optional.of(timeless));
    }

    private SunConditions timed(Site place) throws ScenarioException {
        refuseDoubledSun();
        Optional<ZonedDateTime> when = instant(place);
        problems.throwIfAny();
        SunMoment moment = SunMoment.at(place, when.orElseThrow());
        if (!moment.position().isUp()) {
            tell("when.time", SunDownMessage.of(moment));
            throw problems.refusal();
        }
        BeamRangeModel sky = sky(moment);
        problems.throwIfAny();
        SiteConditions site = new SiteConditions(place, moment.time(), sky);
        return new SunConditions(
                moment.position().elevationRadians(),
                sky.at(moment).likelyWattsPerSquareMetre(),
                Optional.of(site),
                Optional.empty());
    }

    private void refuseDoubledSun() {
        if (v.has(ELEVATION)) {
            tell(ELEVATION, "place and when say where the sun stands; leave elevation out, or leave when out");
        }
        if (v.has(BEAM) && v.hasSection("sky")) {
            tell(BEAM, "sky says how strong the sunlight is; leave beam out, or leave sky out");
        }
    }

    /** The instant meant; of an hour that the clock shows twice, the first. */
    private Optional<ZonedDateTime> instant(Site place) {
        LocalDateTime local = v.date("when.date").atTime(v.time("when.time"));
        ZoneOffsetTransition change = place.zone().getRules().getTransition(local);
        if (change != null && change.isGap()) {
            tell(
                    "when.time",
                    local.toLocalTime() + " did not exist on " + local.toLocalDate() + " in " + place.zone()
                            + ": the clock went forward from "
                            + change.getDateTimeBefore().toLocalTime() + " to "
                            + change.getDateTimeAfter().toLocalTime() + "; choose another time");
            return Optional.empty();
        }
        return Optional.of(local.atZone(place.zone()));
    }

    private BeamRangeModel sky(SunMoment moment) {
        if (v.text("sky.kind").equals("measured")) {
            return measured("sky.beam", moment);
        }
        return v.has(BEAM) ? measured(BEAM, moment) : clear();
    }

    private BeamRangeModel clear() {
        if (v.has("sky.turbidity")) {
            return BeamRangeModel.centredOn(new EsraSky(LinkeTurbidity.constant(v.number("sky.turbidity"))));
        }
        String word = v.text("sky.setting");
        for (AirType setting : AirType.values()) {
            if (setting.word().equals(word)) {
                return setting == AirType.LOCAL
                        ? BeamRangeModel.centredOn(EsraSky.of(setting))
                        : BeamRangeModel.around(EsraSky.of(setting));
            }
        }
        throw new IllegalStateException("setting " + word);
    }

    private BeamRangeModel measured(String key, SunMoment moment) {
        try {
            return BeamRangeModel.exact(EsraSky.matching(v.number(key), moment));
        } catch (IllegalArgumentException e) {
            tell(
                    key,
                    "no air without clouds gives a beam of " + v.shown(key) + " while the sun stands "
                            + QuantityWriter.degrees(moment.position().elevationRadians())
                            + " high, as it does then and there; check beam, date and time");
            return clear();
        }
    }

    private void tell(String path, String text) {
        problems.add(v.line(path), path, text);
    }
}

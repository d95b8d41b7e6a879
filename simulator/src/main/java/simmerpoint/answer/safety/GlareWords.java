package simmerpoint.answer.safety;

import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.eyes.Glare;
import simmerpoint.safety.eyes.RetinalMetric;
import simmerpoint.safety.parked.ParkedHour;

/**
 * What the mirror does to eyes, in words: an indication, never a clearance.
 *
 * @param result what was found
 * @param figures in the reader's units
 */
record GlareWords(SafetyResult result, FigureFormat figures) {
    Section section() {
        Glare glare = result.glare();
        return Section.headed("Eyes")
                .say("Anyone beyond the focus who looks back into the light sees the sun in the mirror, "
                        + figures.percent(glare.suns())
                        + " as bright as the sun itself from any distance, and wider the nearer. " + burn(glare))
                .say(directions(glare))
                .say(day(glare))
                .say(
                        "This follows a published metric for a glance of 0.15 s by an adult in daylight; it knows no colours, and"
                                + " children\u2019s eyes let more light in. Take it as an indication. Nothing makes a longer look safe.")
                .build();
    }

    private String burn(Glare glare) {
        if (!Double.isFinite(glare.burnAngle())) {
            return "A glance leaves an after-image; a longer look can damage the eye as looking at the sun does.";
        }
        return "Nearer than about " + figures.length(glare.burnMetres(), 2) + " to the focus it is more than "
                + FigureFormat.rounded(glare.burnAngle() / RetinalMetric.SUN, 2)
                + " suns wide, and one glance may damage the eye for good; farther away a glance leaves an after-image and a"
                + " longer look damages, as looking at the sun does.";
    }

    /** When the light goes level and down on the day of the scenario. */
    private Optional<String> day(Glare glare) {
        return result.parked().date().map(date -> {
            List<ParkedHour> hours = result.parked().ways().get(0).on(date);
            List<ParkedHour> upwards = hours.stream()
                    .filter(hour -> hour.sunElevationRadians() > glare.coneRadians())
                    .toList();
            String on = "Aimed at the sun on " + TimeWords.date(date) + ", the mirror throws its light ";
            return upwards.isEmpty()
                    ? on + "level and down, too, all day long."
                    : on + "level and down before "
                            + TimeWords.clock(upwards.get(0).time()) + " and after "
                            + TimeWords.clock(upwards.get(upwards.size() - 1).time())
                            + ", and upwards only in between.";
        });
    }

    private String directions(Glare glare) {
        String cone = "That light goes within " + figures.degrees(glare.coneRadians())
                + " of the line from the dish to the sun";
        return glare.lowestRadians() > 0
                ? cone + ", so with the sun this high it passes upwards; once the sun is lower than "
                        + figures.degrees(glare.coneRadians())
                        + " it meets the eyes of whoever stands on the sun\u2019s side."
                : cone
                        + ", so now it also goes level and down: whoever stands on the sun\u2019s side of the focus looks into"
                        + " it. Keep that side free.";
    }
}

package simmerpoint.answer.aim;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Aim;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTimes;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.SunTrack;
import simmerpoint.sun.SolarDisc;
import simmerpoint.sun.SunMoment;
import simmerpoint.units.UnitSystem;

/** How often to aim, what the cook gets in between, and what aiming ahead buys. */
final class AimAgainSection {
    /** Shadows shorter than this are hard to set by eye, m; and how long a stick makes one that is not. */
    private static final double FINE = 0.003;

    /** A lead must stretch the interval by so much to be worth the trouble. */
    private static final double WORTH_IT = 1.2;

    private static final double EASY = 0.005;
    private static final double STICK_STEP = 0.05;

    private final AimResult result;
    private final FigureFormat figures;
    private final TargetWords words;
    private final String panHint;
    private final List<Item> items = new ArrayList<>();

    private AimAgainSection(AimResult result, UnitSystem system, String panHint) {
        this.result = result;
        this.panHint = panHint;
        figures = new FigureFormat(system);
        words = TargetWords.of(result.scenario().target());
    }

    /** The section; {@code panHint} ends a sentence that says who tells where else the pan can stand. */
    static Section of(AimResult result, UnitSystem system, String panHint) {
        AimAgainSection section = new AimAgainSection(result, system, panHint);
        section.build();
        return new Section("How often to aim", section.items);
    }

    private void build() {
        say(result.minutes().isPresent() ? again() : never());
        say(sun());
        result.betterThanDeadOn().ifPresent(best -> say(better(best)));
        result.lead().ifPresent(lead -> {
            say(result.stretch() > WORTH_IT ? ahead(lead) : useless(lead));
            if (result.stretch() > WORTH_IT) {
                say(stick(lead));
            }
        });
        if (result.minutes().isPresent() && result.lead().isEmpty()) {
            say(
                    "Aiming ahead of the sun is not worked out for this dish: it turns about a point so far before its middle "
                            + "that a turn hardly brings the spot along, or has no room to be turned ahead.");
        }
    }

    private void say(String text) {
        items.add(new Item.Sentence(text));
    }

    private String loss() {
        return SkyWords.loss(result.plan().lossShare());
    }

    private String gets() {
        return words.isPan() ? "takes up" : "catches";
    }

    /** When to aim again and for what loss, without reasons; for a dish that is aimed off, that it must be turned first. */
    static String brief(AimTimes times) {
        String interval = SkyWords.minutes(times.deadOnInterval().minutes());
        boolean again = times.minutes().isPresent();
        if (AimOffWords.isOff(times)) {
            return "Aimed off now: aim anew, then " + (again ? "every " : "not for ") + interval;
        }
        return again
                ? "Aim again every " + interval + " or lose "
                        + SkyWords.loss(times.plan().lossShare())
                : "For " + interval + " the dish need not be aimed again";
    }

    private String again() {
        AimInterval interval = result.deadOnInterval();
        return off() + (AimOffWords.isOff(result.times()) ? "Aimed dead on, aim" : "Aim") + " again every "
                + SkyWords.minutes(interval.minutes()) + ": by then " + loss() + " of the "
                + figures.plainWatts(result.deadOnWatts()) + " that the " + words.noun() + " " + gets()
                + " when the dish is aimed dead on are lost. What it gets on average over that time is "
                + figures.plainWatts(interval.mean()) + ", " + ofDeadOn(interval.mean()) + " of dead on.";
    }

    private String never() {
        AimInterval interval = result.deadOnInterval();
        boolean toTheHorizon = interval.minutes() * result.way().radiansPerMinute() < AimTolerance.RANGE * (1 - 1e-6);
        return off() + "For " + SkyWords.minutes(interval.minutes())
                + (toTheHorizon ? ", until the sun is down," : ", as long as is looked at,")
                + " the dish need not be aimed again: of the "
                + figures.plainWatts(result.deadOnWatts()) + " that the " + words.noun() + " " + gets()
                + " when it is aimed dead on, less than " + loss() + " are lost. The average over that time is "
                + figures.plainWatts(interval.mean()) + ".";
    }

    private String off() {
        return AimOffWords.sentence(result.times(), figures)
                .map(text -> text + " Aim it anew first. ")
                .orElse("");
    }

    private String ofDeadOn(Estimate watts) {
        double first = result.deadOnInterval().moments().get(0).watts().value();
        return figures.percent(watts.value() / first);
    }

    private String better(AimResult.Best best) {
        double stick = result.plan().stickMetres();
        double up = best.side() ? 0 : best.radians();
        double side = best.side() ? best.radians() : 0;
        return "Dead on is not the best here: turned " + SkyWords.angle(best.radians()) + " " + SkyWords.way(up, side)
                + " from it the " + words.noun() + " gets " + figures.percent(best.gainShare())
                + " more. (On a stick " + figures.length(stick) + " long the shadow\u2019s tip then lies "
                + figures.length(AimLead.shadow(stick, Math.abs(best.radians())), 2) + " from its foot, "
                + SkyWords.onDish(up, side) + ".) Or the " + words.noun()
                + " can stand elsewhere: "
                + (words.isPan() ? panHint : "see stand in the scenario.");
    }

    private String useless(AimLead lead) {
        return "Aiming ahead of the sun buys nothing here: it would be time to aim again after "
                + SkyWords.minutes(lead.interval().minutes())
                + " already, since the watts do not fall alike on both sides of dead on.";
    }

    private String sun() {
        SunTrack way = result.way();
        String goes = SkyWords.way(way.upRadiansPerMinute(), way.sideRadiansPerMinute());
        String speed = FigureFormat.fixed(Math.toDegrees(way.radiansPerMinute()), 2) + "\u00b0 a minute";
        if (way.from().isPresent()) {
            SunMoment moment = way.from().get();
            return "That is for " + TimeWords.clock(moment.time()) + " on " + TimeWords.date(moment.date())
                    + ", when the sun goes " + goes + " (facing it) by " + speed + ".";
        }
        String worst = result.tolerance().drift().isPresent()
                ? ", which costs this dish the most of up, down, right and left; the table below has all four."
                : "; nor is so much lost when it goes another way.";
        return "The scenario does not name place and time, so this is the cautious figure: the sun at its fastest, "
                + speed + ", going " + goes + worst
                + " With place: and when: in the scenario the sun\u2019s real way is taken.";
    }

    private String ahead(AimLead lead) {
        AimInterval with = lead.interval();
        AimInterval without = result.longInterval();
        StringBuilder text = new StringBuilder("Or aim ahead, and only every ")
                .append(SkyWords.minutes(with.minutes()))
                .append(": turn the dish ")
                .append(SkyWords.angle(lead.radians()))
                .append(" beyond the sun, the way the sun goes")
                .append(parts(lead))
                .append(", and let the sun drift through. The ")
                .append(words.noun())
                .append(" then gets ")
                .append(figures.plainWatts(with.mean()))
                .append(" on average and never less than ")
                .append(figures.plainWatts(with.least()))
                .append("; aimed dead on and left as long it would get ")
                .append(figures.plainWatts(without.mean()))
                .append(" on average and come down to ")
                .append(figures.plainWatts(without.least()))
                .append(". ");
        if (result.scenario().aim().panCarriedBy() == Aim.PanCarrier.DISH) {
            return text.append("The dish carries the ")
                    .append(words.noun())
                    .append(", so the lead is all that the sun goes in half that time.")
                    .toString();
        }
        return text.append("The ")
                .append(words.noun())
                .append(
                        " stays where it stands for a dead-on aim; since a turn of the dish moves the spot farther than the sun\u2019s ")
                .append("drift does, the lead is only ")
                .append(FigureFormat.fixed(lead.share(), 2))
                .append(" of what the sun goes in half that time.")
                .toString();
    }

    private String parts(AimLead lead) {
        if (!result.way().isReal()) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        add(parts, lead.upRadians(), "up", "down");
        add(parts, lead.sideRadians(), "to the right", "to the left");
        return parts.isEmpty() ? "" : " (" + String.join(", ", parts) + ")";
    }

    private static void add(List<String> parts, double radians, String positive, String negative) {
        if (Math.abs(Math.toDegrees(radians)) >= 0.05) {
            parts.add(SkyWords.angle(radians) + " " + (radians > 0 ? positive : negative));
        }
    }

    private String stick(AimLead lead) {
        double length = result.plan().stickMetres();
        double offset = AimLead.shadow(length, lead.radians());
        SunTrack way = result.way();
        String towards = way.isReal()
                ? SkyWords.onDish(lead.upRadians(), lead.sideRadians())
                : "the way the sun goes (climbing: towards the dish\u2019s upper edge; going right: "
                        + TargetWords.RIGHT + ")";
        StringBuilder text = new StringBuilder("To set it, stand a stick ")
                .append(figures.length(length))
                .append(
                        " long on the dish, along its axis: dead on it throws no shadow; with this lead the shadow\u2019s tip lies ")
                .append(figures.length(offset, 2))
                .append(" from its foot, ")
                .append(towards)
                .append(". The tip is blurred over ")
                .append(figures.length(SolarDisc.MEAN_WIDTH_RADIANS * length, 1))
                .append(" by the sun\u2019s width.");
        if (offset < FINE) {
            double longer = STICK_STEP * Math.ceil(EASY / Math.tan(lead.radians()) / STICK_STEP);
            text.append(" A longer stick shows more: ")
                    .append(figures.length(longer, 2))
                    .append(" make it ")
                    .append(figures.length(AimLead.shadow(longer, lead.radians()), 2))
                    .append(".");
        }
        return text.toString();
    }
}

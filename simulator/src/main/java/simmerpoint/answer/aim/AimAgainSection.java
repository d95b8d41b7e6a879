package simmerpoint.answer.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.PowerWords;
import simmerpoint.answer.words.ShellWords;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Aim;
import simmerpoint.study.aim.AimInterval;
import simmerpoint.study.aim.AimLead;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.SunTrack;
import simmerpoint.sun.SolarDisc;
import simmerpoint.sun.SunMoment;

/**
 * How often to aim, what the cook gets in between, and what aiming ahead buys.
 *
 * @param result what was found
 * @param figures in the reader's units
 * @param words for what the light falls on
 * @param panHint ends a sentence that says who tells where else the pan can stand
 */
record AimAgainSection(AimResult result, FigureFormat figures, TargetWords words, String panHint) {
    /** Shadows shorter than this are hard to set by eye, m; and how long a stick makes one that is not. */
    private static final double FINE = 0.003;

    /** A lead must stretch the interval by so much to be worth the trouble. */
    private static final double WORTH_IT = 1.2;

    /** Beyond so many standard errors a mean is seen to be more. */
    private static final double MORE_ERRORS = 3;

    private static final double EASY = 0.005;
    private static final double STICK_STEP = 0.05;

    Section section() {
        if (!AimOffWords.brings(result.times())) {
            return Section.headed("How often to aim")
                    .say(AimAnswer.brief(result.times()) + ". " + nothing())
                    .build();
        }
        boolean again = result.minutes().isPresent();
        boolean worthIt = result.stretch() > WORTH_IT;
        return Section.headed("How often to aim")
                .say(again ? again() : never())
                .say(sun())
                .say(shell())
                .say(shellWords().map(ShellWords::stickAnew))
                .say(result.betterThanDeadOn().map(this::better))
                .say(result.lead().map(lead -> worthIt ? ahead(lead) : useless(lead)))
                .say(result.lead().filter(lead -> worthIt).map(this::stick))
                .sayIf(
                        again && result.lead().isEmpty(),
                        "Aiming ahead of the sun is not worked out for this dish: it turns about a point so far before its middle "
                                + "that a turn hardly brings the spot along, or has no room to be turned ahead.")
                .build();
    }

    /** What becomes of a pan that gains nothing however it is aimed. */
    String nothing() {
        PowerWords power = new PowerWords(result.deadOn().trace().heat(), figures.system());
        return "There is nothing to lose: " + power.gets(result.deadOnWatts()) + ".";
    }

    /** How a shell stands when it is aimed: not square to the sun, as it looks. */
    Optional<String> shell() {
        return shellWords().map(shell -> "This shell does not face the sun. " + shell.facing() + " " + shell.stick());
    }

    private Optional<ShellWords> shellWords() {
        return ShellWords.leaning(result.scenario(), figures);
    }

    private String loss() {
        return SkyWords.loss(result.plan().lossShare());
    }

    private String again() {
        AimInterval interval = result.deadOnInterval();
        return off() + (AimOffWords.isOff(result.times()) ? "Aimed dead on, aim" : "Aim") + " again every "
                + SkyWords.minutes(interval.minutes()) + ": by then you lose " + loss()
                + " of what a fresh aim gives. Aimed dead on, "
                + figures.plainWatts(result.deadOnWatts()) + " " + words.useful()
                + LikelyWords.behind(result.deadOnLikely()) + "; on average over that time it is "
                + figures.plainWatts(interval.mean()) + ", "
                + ofDeadOn(interval.mean()) + " of dead on" + drifting(interval) + ".";
    }

    private String never() {
        AimInterval interval = result.deadOnInterval();
        boolean toTheHorizon = interval.minutes() * result.way().radiansPerMinute() < AimTolerance.RANGE * (1 - 1e-6);
        return off() + "For " + SkyWords.minutes(interval.minutes())
                + (toTheHorizon ? ", until the sun is down," : ", as far as was looked,")
                + " the dish need not be aimed again: of the "
                + figures.plainWatts(result.deadOnWatts()) + " that " + words.useful()
                + " when it is aimed dead on, less than " + loss() + " are lost. The average over that time is "
                + figures.plainWatts(interval.mean()) + ".";
    }

    private String off() {
        return AimOffWords.sentence(result.times(), figures)
                .map(text -> text + " Aim it anew first. ")
                .orElse("");
    }

    /** Why a dish left alone brings more than one aimed dead on, where it does. */
    private String drifting(AimInterval interval) {
        double deadOn = interval.moments().get(0).watts().value();
        boolean more =
                interval.mean().value() - deadOn > MORE_ERRORS * interval.mean().standardError();
        return more
                ? ", more than dead on, because the " + words.noun()
                        + " stands off the focus and the light drifts onto it as the sun moves"
                : "";
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

    /** What the pan gets from one aiming to the next. */
    String onAverage() {
        AimInterval interval = result.deadOnInterval();
        return "Aimed dead on, " + figures.plainWatts(result.deadOnWatts()) + " " + words.useful()
                + LikelyWords.behind(result.deadOnLikely()) + "; on average until you aim again "
                + figures.plainWatts(interval.mean()) + drifting(interval) + ".";
    }

    /** For which sun that is. */
    String when() {
        SunTrack way = result.way();
        return way.from()
                .map(moment -> "For the sun at " + TimeWords.clock(moment.time()) + " on "
                        + TimeWords.date(moment.date()) + ".")
                .orElse(
                        "The scenario names no place and time, so this is for the sun at its fastest, going the worst way.");
    }

    /** What aiming ahead buys, where it buys anything. */
    Optional<String> aheadInShort() {
        return result.lead()
                .filter(lead -> result.stretch() > WORTH_IT)
                .map(lead -> "Aimed " + SkyWords.angle(lead.radians()) + " ahead of the sun, every "
                        + SkyWords.minutes(lead.interval().minutes()) + " will do (on average "
                        + figures.plainWatts(lead.interval().mean()) + ").");
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
        String worst = result.minutes().isPresent()
                ? ", which costs this dish the most of up, down, right and left."
                : "; in any other direction less is lost.";
        return "The scenario does not name place and time, so this is the cautious figure: the sun at its fastest, "
                + speed + ", going " + goes + worst
                + " With place: and when: in the scenario it is the sun\u2019s real path.";
    }

    private String ahead(AimLead lead) {
        AimInterval with = lead.interval();
        AimInterval without = result.longInterval();
        String noun = words.noun();
        return "Or aim ahead, only every " + SkyWords.minutes(with.minutes()) + ": turn the dish "
                + SkyWords.angle(lead.radians()) + " beyond the sun, the way the sun goes" + parts(lead)
                + ", and let the sun drift through. The " + noun + " then gets " + figures.plainWatts(with.mean())
                + " on average and never less than " + figures.plainWatts(with.least())
                + "; aimed dead on and left as long it would get " + figures.plainWatts(without.mean())
                + " on average and come down to " + figures.plainWatts(without.least()) + ". "
                + (result.scenario().aim().panCarriedBy() == Aim.PanCarrier.DISH
                        ? "The dish carries the " + noun
                                + ", so the lead is the whole angle that the sun goes in half that time."
                        : "The " + noun
                                + " stays where it stands for a dead-on aim; since a turn of the dish moves the spot farther"
                                + " than the sun\u2019s drift does, the lead is only "
                                + FigureFormat.fixed(lead.share(), 2)
                                + " of the angle that the sun goes in half that time.");
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
        String towards = result.way().isReal()
                ? SkyWords.onDish(lead.upRadians(), lead.sideRadians())
                : "the way the sun goes (climbing: towards the dish\u2019s upper edge; going right: "
                        + TargetWords.RIGHT + ")";
        return "To set it, stand a stick " + figures.length(length)
                + " long " + SightingStick.where(shellWords().isPresent())
                + ": dead on it throws no shadow; with this lead the shadow\u2019s tip lies "
                + figures.length(offset, 2) + " from its foot, " + towards + ". The tip is blurred over "
                + figures.length(SolarDisc.MEAN_WIDTH_RADIANS * length, 1) + " by the sun\u2019s width."
                + (offset < FINE ? longerStick(lead) : "");
    }

    private String longerStick(AimLead lead) {
        double length = STICK_STEP * Math.ceil(EASY / Math.tan(lead.radians()) / STICK_STEP);
        return " A longer stick shows more: " + figures.length(length, 2) + " make it "
                + figures.length(AimLead.shadow(length, lead.radians()), 2) + ".";
    }
}

package simmerpoint.answer.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.FryingWords;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.answer.words.HobWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.answer.words.PowerWords;
import simmerpoint.heat.FryingLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Stand;
import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;

/** What the pan gets where it stands: watts, boil or simmer, minutes; then frying, kept apart. */
record PanHereSection(PanResult result, FigureFormat figures, MoveWords lengths) {
    /** So little light is none, W/m². */
    private static final double NOTHING = 10;

    Section section() {
        HeatSentences heat = new HeatSentences(result.heat(), result.base().likely(), figures.system());
        Optional<String> reach = new HeightWords(result.base().scenario().heights(), figures)
                .outOfReach(result.base().scenario().panHeightMetres());
        SectionBuilder out = Section.headed("What the pan gets where it stands")
                .say(gets() + place() + ": " + HeatWords.does(heat.level()) + ". " + asGiven() + heat.boil()
                        + heat.steam())
                .caution(reach.map(words -> "The pan stands " + words + "."))
                .say(heat.levelSentence() + " This is with " + heat.weather() + ". "
                        + HobWords.sentence(result.base().likelyPower()))
                .say(hotSpot())
                .say(frying());
        if (here().frying().level() == FryingLevel.SEAR) {
            out.caution("Oil in this pan can smoke and catch fire. Stay with it, and keep a lid within reach.");
        }
        return out.say(heat.cloud() + " " + heat.afterwards()).build();
    }

    private PanPosition here() {
        return result.here();
    }

    private String gets() {
        Estimate power = here().cookingPower();
        PowerWords words = new PowerWords(Optional.of(result.heat()), figures.system());
        return likely().map(range -> capital(LikelyWords.power(range)) + " " + words.meaning(power))
                        .orElseGet(() -> capital(words.gets(power)))
                + (power.value() > 0 ? " where the pan stands, " : "; it stands with ");
    }

    private Optional<LikelyRange> likely() {
        return result.base()
                .likely()
                .map(LikelyResult::power)
                .filter(range -> range.high() > 0 && here().cookingPower().value() > 0);
    }

    private String asGiven() {
        return likely().isEmpty()
                ? ""
                : "With every figure exactly as given it is " + figures.plainWatts(here().cookingPower())
                        + ", which other places are held against. ";
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private String place() {
        Stand stand = result.base().scenario().stand();
        List<String> moves = new ArrayList<>();
        for (Move move : List.of(Move.PULL_BACK, Move.RAISE, Move.SIDE)) {
            double metres = move.of(stand);
            if (metres != 0) {
                moves.add(lengths.alone(Math.abs(metres)) + " " + MoveWords.way(move, metres > 0 ? 1 : -1));
            }
        }
        double slide = stand.slideMetres();
        String slid = slide == 0
                ? ""
                : ", the dish slid " + (slide > 0 ? "back" : "forward") + " by " + lengths.alone(Math.abs(slide));
        return (moves.isEmpty()
                        ? "its middle at the focus"
                        : "its middle " + String.join(" and ", moves) + " than the focus")
                + slid;
    }

    private String hotSpot() {
        if (!(here().meanFlux() > 0)) {
            return "No focused light reaches the underside.";
        }
        return "The hottest spot of the underside gets " + figures.plainFlux(here().peakFlux()) + ", "
                + FigureFormat.rounded(here().peakToMean(), 2)
                + " times its average: "
                + (scorches() ? "thick food scorches there before the rest is hot. " : "too weak to scorch food. ")
                + figures.percent(here().wallShare())
                + " of the focused light that reaches the pan falls on its wall.";
    }

    private boolean scorches() {
        return FryingWords.scorches(here().peakFlux().value(), here().absorbed().value(), area());
    }

    private double area() {
        return result.cooking().vessel().levelArea();
    }

    private String frying() {
        Estimate middle = new Estimate(here().middleFlux(), 0.03 * here().middleFlux());
        if (FryingWords.isBelowLowFlame(here().absorbed().value(), area())) {
            return "For frying, this pan gets less than the lowest flame of a hob gives a pan of its "
                    + "size: too little to fry, wherever the light falls.";
        }
        String how = here().frying().level() == FryingLevel.NO_FRYING
                ? ""
                : " It heats " + FryingWords.heats(here().frying().spread(), scorches()) + ".";
        return "Frying goes by the heat per area in the middle, not by the watts. The middle of this pan "
                + "takes up " + (here().middleFlux() < NOTHING ? "next to nothing" : figures.plainFlux(middle)) + ", "
                + HeatWords.does(here().frying().level()) + "." + how;
    }
}

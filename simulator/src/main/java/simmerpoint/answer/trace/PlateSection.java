package simmerpoint.answer.trace;

import java.util.Optional;
import java.util.function.Function;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.heat.plate.BottomTemperatures;
import simmerpoint.heat.plate.CookingOil;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.trace.OilResult;
import simmerpoint.study.trace.PlateResult;
import simmerpoint.uncertainty.LikelyRange;

/**
 * How hot the bottom of the pan gets, for frying and for scorching.
 *
 * @param plate what was worked out
 * @param figures in the reader's units
 * @param words for what the light falls on
 */
record PlateSection(PlateResult plate, FigureFormat figures, TargetWords words) {
    /** Frying oils smoke from 204 to 238 °C, so a pancake burns about here: copy of an encyclopedia's table of smoke points. */
    private static final double BURNS_CELSIUS = 230;

    /** Food browns fast from 140 to 165 °C: from memory. Below, a pancake stays pale, and rice does not burn on. */
    private static final double BROWNS_CELSIUS = 145;

    private static final double MOVING_MINUTE = 45;

    Section section() {
        return Section.headed("How hot the pan's bottom gets")
                .say(empty())
                .say(plate.held().map(this::held))
                .say(wet())
                .say(oil())
                .caution(Optional.of(fire()).filter(text -> fries()))
                .say("Warped pans are no worse: light heats a bottom wherever it stands, and there is no hob to touch."
                        + " Ranges are those of four in five such cookers, each with the light as this one shares it out; where"
                        + " the spot lands on the bottom and the pan's inside add to that.")
                .build();
    }

    /** Whether oil gets hot enough to fry in it in some such cooker. */
    private boolean fries() {
        return plate.oil().soonestSeconds().isPresent();
    }

    private String fire() {
        return "Hot oil burns and catches fire: it smokes from about "
                + heat().roughly(CookingOil.SMOKE_CELSIUS) + ", and its vapour can be lit from about "
                + heat().roughly(CookingOil.FLASH_CELSIUS)
                + " (from memory). Stay with it, turn the dish away in good time, keep a lid within reach, and"
                + " never put water on it.";
    }

    private HeatWords heat() {
        return new HeatWords(figures.system());
    }

    private String empty() {
        BottomTemperatures end = plate.empty();
        String sheet = figures.length(plate.plate().thicknessMetres(), 2) + " of "
                + OneLine.of(plate.plate().material().name());
        String start = "Empty but for a film of oil and with the lid off, its bottom (" + sheet + ") ";
        String ends = "about " + heat().roughly(end.middleCelsius()) + " in the middle"
                + range(PlateResult.Range::middleCelsius) + hottest(end) + " and " + heat().roughly(end.edgeCelsius())
                + " at the edge"
                + range(PlateResult.Range::edgeCelsius);
        String griddle = heat().roughly(PlateResult.GRIDDLE_CELSIUS);
        if (plate.hotSeconds().isEmpty()) {
            return start + "ends at " + ends + ". For pancakes it wants " + griddle + ".";
        }
        return start + "is hot enough for pancakes, " + griddle + " in the middle, "
                + after(plate.hotSeconds().getAsDouble()) + "; left there it ends at " + ends + ".";
    }

    /** ", 520 °C at its hottest place"; empty where that is no hotter than the middle. */
    private String hottest(BottomTemperatures end) {
        String most = heat().roughly(end.hottestCelsius());
        return most.equals(heat().roughly(end.middleCelsius())) ? "" : ", about " + most + " at its hottest place";
    }

    /** " (370 to 450 °C)"; empty where no range was worked out. */
    private String range(Function<PlateResult.Range, LikelyRange> figure) {
        return plate.range()
                .map(range -> " (" + heat().roughly(figure.apply(range)) + ")")
                .orElse("");
    }

    private String oil() {
        OilResult oil = plate.oil();
        String fry = heat().roughly(CookingOil.FRYING_CELSIUS);
        String start = "With oil " + figures.length(oil.depthMetres(), 2) + " deep instead ("
                + heat().volume(1000 * oil.kilograms() / CookingOil.DENSITY) + ", a third of the pan, lid off) ";
        String ends = "ends at about " + heat().roughly(oil.endCelsius().likely())
                + (plate.range().isPresent() ? " (" + heat().roughly(oil.endCelsius()) + ")" : "");
        if (oil.soonestSeconds().isEmpty()) {
            return start + "it " + ends + ", too cool for deep frying, which wants "
                    + heat().roughly(new LikelyRange(
                            CookingOil.SLOW_FRYING_CELSIUS, CookingOil.FRYING_CELSIUS, CookingOil.FRYING_CELSIUS))
                    + ".";
        }
        double soonest = oil.soonestSeconds().getAsDouble();
        String reaches = oil.latestSeconds().isPresent()
                ? "it reaches " + fry + " for deep frying after "
                        + HeatWords.minutes(new LikelyRange(
                                soonest, soonest, oil.latestSeconds().getAsDouble()))
                : "it may or may not reach " + fry + " for deep frying, at the soonest after "
                        + HeatWords.time(soonest);
        return start + reaches + "; left there it " + ends
                + ". At " + fry + " the hottest place under the oil has about " + heat().roughly(oil.hottestCelsius())
                + (oil.hottestCelsius() >= CookingOil.SMOKE_CELSIUS
                        ? ", where it smokes: stand the pan where the light is even."
                        : ".");
    }

    private static String after(double seconds) {
        return seconds < MOVING_MINUTE ? "in less than a minute" : "after about " + HeatWords.time(seconds);
    }

    private String held(BottomTemperatures held) {
        String griddle = heat().roughly(PlateResult.GRIDDLE_CELSIUS);
        return "Turned away until the middle stays at " + griddle + ", its hottest place, "
                + figures.length(held.hottestRadius(), 2) + " from the middle "
                + words.side(held.hottestX(), held.hottestY()) + ", has " + heat().roughly(held.hottestCelsius())
                + " and its edge " + heat().roughly(held.edgeCelsius()) + ": " + pancake(held) + "." + others();
    }

    private static String pancake(BottomTemperatures held) {
        boolean burns = held.hottestCelsius() >= BURNS_CELSIUS;
        boolean pale = held.edgeCelsius() < BROWNS_CELSIUS;
        return burns
                ? "a pancake burns there" + (pale ? " while it stays pale at the edge" : "")
                : pale ? "a pancake as wide as the pan stays pale at the edge" : "a pancake browns all over";
    }

    /** What a better bottom would do. */
    private String others() {
        boolean copper = plate.plate().material().name().equals(PlateResult.COPPER);
        if (plate.heldThicker().isEmpty() && (copper || plate.heldCopper().isEmpty())) {
            return " A thicker bottom" + (copper ? "" : " or one of copper")
                    + " would spread the heat so far that its middle would not get there.";
        }
        String thicker = " Twice as thick a bottom would have " + instead(plate.heldThicker());
        return copper ? thicker + "." : thicker + "; one of copper, no thicker, " + instead(plate.heldCopper()) + ".";
    }

    private String instead(Optional<BottomTemperatures> other) {
        return other.map(t -> heat().roughly(t.hottestCelsius()) + " and " + heat().roughly(t.edgeCelsius()))
                .orElse("too little in the middle");
    }

    private String wet() {
        double above = plate.underWaterCelsius() - plate.waterCelsius();
        String water = "Under water of " + heat().temperature(plate.waterCelsius())
                + " the hottest place of the bottom is only " + heat().difference(LikelyRange.exact(above))
                + " hotter, so nothing that moves burns on. Under " + figures.length(PlateResult.LAYER_METRES, 1)
                + " of rice or thick porridge that lies still it gets to about "
                + heat().roughly(plate.underFoodCelsius()) + range(PlateResult.Range::underFoodCelsius);
        return plate.underFoodCelsius() >= BROWNS_CELSIUS
                ? water + " and burns on: stir, or turn the dish away."
                : water + ", too little to burn on.";
    }
}

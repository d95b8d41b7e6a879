package simmerpoint.answer.words;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.safety.risk.SkinTimes;
import simmerpoint.safety.risk.Stuff;

/**
 * What the focused light can do to people and things, by its flux: the one place with sentences about it, so that the same flux
 * gives the same sentence in every command. Thresholds and times with their sources are those of {@link Hazard} and {@link
 * SkinTimes}.
 *
 * <p>Eyes are not judged by a number here: the direction and width of the glare decide, not the flux on the pan.
 */
public final class Cautions {
    /** Heading of every section of cautions. */
    public static final String HEADING = "Take care";

    /** Heading of every section on errors and what the figures came from. */
    public static final String HOW_SURE = "How sure this is";

    /** For whatever tells of heat or light and knows no flux. */
    public static final String ALWAYS = "Focused sunlight blinds and burns: cover the mirror whenever it is not in use;"
            + " safety tells what it can burn, and how far away.";

    /** All light of the yard, not only that at the pan. */
    public static final String AROUND = "around the focus";

    private static final String BLINDS = "Focused sunlight blinds and burns.";

    /** The end of the table of {@link SkinTimes}, W/m². */
    private static final double SURELY_BURNS = 12_000;

    /** Skin hurts within seconds, W/m². */
    private static final double HURTS_SOON = 5_000;

    private Cautions() {}

    /** The light on a target and beside it: "at the pan". */
    public static String at(String targetWord) {
        return "at the " + targetWord;
    }

    /**
     * The shortest caution there is, for a place where one line is seen all the time.
     *
     * @param where the light of that flux is, {@link #at} a target or {@link #AROUND} the focus
     */
    public static String oneLine(double fluxWattsPerSquareMetre, String where) {
        return BLINDS + " " + fire(fluxWattsPerSquareMetre, where);
    }

    /** The cautions of {@link #sentences} as items that every answer has, see {@link Item.Caution#general}. */
    public static List<Item> items(double fluxWattsPerSquareMetre, String targetWord) {
        return items(sentences(fluxWattsPerSquareMetre, targetWord));
    }

    /** The same for the hottest light anywhere around the focus. */
    public static List<Item> itemsAround(double fluxWattsPerSquareMetre, String targetWord) {
        return items(sentences(fluxWattsPerSquareMetre, targetWord, AROUND, ""));
    }

    private static List<Item> items(List<String> sentences) {
        return sentences.stream()
                .map(text -> (Item) new Item.Caution(text, true))
                .toList();
    }

    /** The same under their heading. */
    public static Section section(double fluxWattsPerSquareMetre, String targetWord) {
        return new Section(HEADING, items(fluxWattsPerSquareMetre, targetWord));
    }

    /**
     * The cautions for a hottest spot of {@code fluxWattsPerSquareMetre}, the worst first; never empty, whatever the
     * flux.
     *
     * @param targetWord what the light falls on, "pan" or "disc"
     */
    public static List<String> sentences(double fluxWattsPerSquareMetre, String targetWord) {
        return sentences(
                fluxWattsPerSquareMetre,
                targetWord,
                at(targetWord),
                " Beside the " + targetWord
                        + " and when the dish is aimed or moved the light can be hotter than here.");
    }

    private static List<String> sentences(double flux, String targetWord, String where, String elsewhere) {
        List<String> out = new ArrayList<>();
        out.add(BLINDS + " Keep eyes, face and hands out of the beam, never look into the mirror "
                + "or long at a bright " + targetWord
                + ", with dark glasses or without, stand to the side, and keep children away.");
        out.add(fire(flux, where) + skin(flux) + elsewhere);
        out.add(
                "Cover the mirror or lay it face down whenever it is not in use; turned away it can still burn. These figures are estimates: "
                        + "local fire rules and your own judgement come first.");
        return out;
    }

    private static String fire(double flux, String where) {
        return Hazard.ofFire(flux)
                .map(hazard -> fire(hazard, where))
                .orElse("Even so, keep anything that burns out of the light.");
    }

    private static String fire(Hazard hazard, String where) {
        return hazard == Hazard.SMOULDER
                ? "Wood left for long where the light " + where + " is strongest can smoulder and catch fire."
                : "Where the light " + where + " is strongest, " + does(hazard) + ".";
    }

    /** What a hazard is: "dry leaves, dry grass and paper catch fire within about half a minute". */
    public static String does(Hazard hazard) {
        String tinder = "dry leaves, dry grass and paper catch fire within about ";
        String chars = "; wood chars within half a minute";
        return switch (hazard) {
            case DISCOMFORT -> "bare skin gets too hot within minutes";
            case PAIN -> "bare skin hurts within half a minute";
            case SMOULDER -> "wood left for long can smoulder and catch fire";
            case TINDER -> tinder + "half a minute";
            case CHAR -> tinder + "10\u00a0seconds" + chars;
            case FLASH -> tinder + "2\u00a0seconds" + chars;
            case BURST -> "paper, dark cloth and thin plywood burst into flames within about 2\u00a0seconds";
        };
    }

    /** What light of this flux does to bare skin and clothes at one place. */
    public static String skinHere(double flux) {
        if (flux < Hazard.DISCOMFORT.wattsPerSquareMetre()) {
            return "Skin gets warm there, not too hot.";
        }
        String skin = flux > SURELY_BURNS
                ? "Skin burns there within seconds."
                : "Skin hurts there after about "
                        + TimeWords.after(SkinTimes.pain(flux).orElseThrow()) + " and is burnt after about "
                        + TimeWords.after(SkinTimes.soonestBurn(flux).orElseThrow()) + ".";
        OptionalDouble cloth = Stuff.DARK_CLOTH.harmed(flux);
        return cloth.isEmpty()
                ? skin
                : skin + " Dark clothes catch fire within about " + TimeWords.after(cloth.getAsDouble()) + ".";
    }

    private static String skin(double flux) {
        if (flux > SURELY_BURNS) {
            return " Skin burns within seconds.";
        }
        if (flux > HURTS_SOON) {
            return " Skin hurts within some "
                    + FigureFormat.fixed(SkinTimes.pain(HURTS_SOON).orElseThrow(), 0)
                    + "\u00a0seconds or less and then burns.";
        }
        return flux > Hazard.DISCOMFORT.wattsPerSquareMetre()
                ? " Skin hurts within a minute or two and can burn after that."
                : "";
    }
}

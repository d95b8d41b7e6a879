package simmerpoint.answer.words;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;

/**
 * What the focused light can do to people and things, by its flux.
 *
 * <p>Things that catch fire by themselves: over 8 kW/m² dry leaves, dry grass and newspaper within half a minute, over
 * 20 kW/m² within ten seconds, over 70 kW/m² within two seconds. Derived here from the radiant exposures that ignite them
 * (S. Glasstone, P. J. Dolan, The Effects of Nuclear Weapons, 3rd ed. 1977, tables 7.35 and 7.40; light much like sunlight,
 * section 7.01; 80 % of the energy within about 2, 10 and 32 s), good to perhaps ±50 % in the open; over 150 kW/m² fir
 * plywood, brown paper and dark cotton within two seconds by the same tables. From 4.3 kW/m² wood can
 * catch after a long time (least flux in V. Babrauskas, Ignition of wood, 2001); plywood smoulders at 7.5 kW/m² within
 * 8 h (Fire Safety Journal, 2006).
 *
 * <p>Skin: pain and second-degree burn after 45 and 187 s at 2, 13 and 40 s at 5, 5 and 14 s at 10, 4 and 11 s at
 * 12 kW/m² (EPA, FEMA, DOT: Handbook of Chemical Hazard Analysis Procedures, 1989, table 4.2). That table ends at 12.
 *
 * <p>Eyes are not judged by a number here: the direction and width of the glare decide, not the flux on the pan.
 */
public final class Cautions {
    /** Heading of every section of cautions. */
    public static final String HEADING = "Take care";

    /** Heading of every section on errors and what the figures came from. */
    public static final String HOW_SURE = "How sure this is";

    private static final String BLINDS = "Focused sunlight blinds and burns.";

    private Cautions() {}

    /** The shortest caution there is, for a place where one line is seen all the time. */
    public static String oneLine(double fluxWattsPerSquareMetre) {
        return BLINDS + " " + fire(fluxWattsPerSquareMetre / 1000);
    }

    /** The cautions of {@link #sentences} as items that every answer has, see {@link Item.Caution#general}. */
    public static List<Item> items(double fluxWattsPerSquareMetre, String targetWord) {
        return sentences(fluxWattsPerSquareMetre, targetWord).stream()
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
        double kilowatts = fluxWattsPerSquareMetre / 1000;
        List<String> out = new ArrayList<>();
        out.add(BLINDS + " Keep eyes, face and hands out of the beam, never look into the mirror "
                + "or at a bright " + targetWord
                + " without dark glasses, stand to the side, and keep children away.");
        out.add(fire(kilowatts) + skin(kilowatts) + " Beside the " + targetWord
                + " and when the dish is aimed or moved the light can be hotter than here.");
        out.add("Cover the mirror or turn it away from the sun whenever it is not in use. These figures are estimates: "
                + "local fire rules and your own judgement come first.");
        return out;
    }

    private static String fire(double kilowatts) {
        String tinder = "dry leaves, dry grass and paper catch fire";
        if (kilowatts > 150) {
            return "Where the light is strongest, paper, dark cloth and thin plywood burst into flames within about"
                    + " 2\u00a0seconds.";
        }
        if (kilowatts > 70) {
            return "Where the light is strongest, " + tinder
                    + " within about 2\u00a0seconds; wood chars within half a minute.";
        }
        if (kilowatts > 20) {
            return "Where the light is strongest, " + tinder
                    + " within about 10\u00a0seconds; wood chars within half a minute.";
        }
        if (kilowatts > 8) {
            return "Where the light is strongest, " + tinder + " within about half a minute.";
        }
        if (kilowatts > 4.3) {
            return "Wood left for long where the light is strongest can smoulder and catch fire.";
        }
        return "Even so, keep anything that burns out of the light.";
    }

    private static String skin(double kilowatts) {
        if (kilowatts > 12) {
            return " Skin burns within seconds.";
        }
        if (kilowatts > 5) {
            return " Skin hurts within some 13\u00a0seconds or less and then burns.";
        }
        return kilowatts > 1.6 ? " Skin hurts within a minute or two and can burn after that." : "";
    }
}

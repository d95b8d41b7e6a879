package simmerpoint.safety.risk;

import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What things are made of, and how soon light harms them. Fire: radiant exposures that ignite, in cal/cm², for pulses of 2, 10 and
 * 32 s (S. Glasstone, P. J. Dolan, The Effects of Nuclear Weapons, 3rd ed. 1977, tables 7.35 and 7.40; ±25 % in the
 * laboratory, ±50 % in the open, more likely higher than lower); a mean flux of 0.8 of them over the pulse, derived here.
 * Below the flux of the longest pulse the table says nothing. Wood chars from 10 cal/cm² on (section 7.38), above its
 * critical flux of 8.5 kW/m² (spruce board, a measured value); under it it can still smoulder, see {@link Hazard#SMOULDER}.
 */
@SuppressWarnings("ImmutableEnumChecker") // Its curves are never written after they are made.
public enum Stuff {
    /** Bare skin: time to a burn. */
    SKIN("skin"),
    /** Leaves, needles and grass in a dry spell. */
    DRY_GRASS("dry grass", 4, 6, 8),
    /** Newspaper. */
    PAPER("newspaper", 4, 6, 11),
    /** Card, cartons. */
    CARD("card", 16, 20, 40),
    /** Dark cotton, black or dark blue. */
    DARK_CLOTH("dark cloth", 10, 15, 20),
    /** White cotton. */
    WHITE_CLOTH("white cloth", 32, 48, 85),
    /** Thin plywood: flames while it is lit. */
    PLYWOOD("plywood", 9, 16, 20),
    /** Bare or painted wood: charring. */
    WOOD("wood"),
    /** Metal, stone, brick, bare earth: nothing burns. */
    STONE("stone or metal");

    private static final double CALORIE = 41.84;
    private static final double WITHIN = 0.8;
    private static final double CHARRING = 10 * CALORIE;
    private static final double CRITICAL = 8.5;

    private final String word;
    private final TimeCurve curve;

    Stuff(String word) {
        this.word = word;
        curve = null;
    }

    Stuff(String word, double two, double ten, double thirty) {
        this.word = word;
        curve = new TimeCurve(new double[] {mean(thirty, 32), mean(ten, 10), mean(two, 2)}, new double[] {32, 10, 2});
    }

    /** Mean flux of a pulse, kW/m². */
    private static double mean(double exposure, double seconds) {
        return WITHIN * exposure * CALORIE / seconds;
    }

    /** Its name in a scenario. */
    public String word() {
        return word;
    }

    /** All names. */
    public static Stream<String> words() {
        return Stream.of(values()).map(Stuff::word);
    }

    /** The one with that name, which there is. */
    public static Stuff named(String word) {
        return Stream.of(values())
                .filter(stuff -> stuff.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no stuff " + word));
    }

    /** Whether times of the shortest pulse are upper bounds at this flux: it goes faster than the table tells. */
    public boolean isSooner(double wattsPerSquareMetre) {
        return curve != null
                && curve.seconds(wattsPerSquareMetre / 1000).orElse(Double.POSITIVE_INFINITY) <= curve.shortest();
    }

    /** Seconds until it is harmed: burnt skin, charred wood, all else in flames; empty where the tables know of no harm. */
    public OptionalDouble harmed(double wattsPerSquareMetre) {
        double kilowatts = wattsPerSquareMetre / 1000;
        return switch (this) {
            case SKIN -> SkinTimes.soonestBurn(wattsPerSquareMetre);
            case WOOD -> kilowatts >= CRITICAL ? OptionalDouble.of(CHARRING / kilowatts) : OptionalDouble.empty();
            case STONE -> OptionalDouble.empty();
            default -> curve.seconds(kilowatts);
        };
    }
}

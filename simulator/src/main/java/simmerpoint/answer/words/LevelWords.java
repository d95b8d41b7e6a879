package simmerpoint.answer.words;

import simmerpoint.heat.HeatLevel;

/** Heat levels in words: one word for each, everywhere. */
public final class LevelWords {
    private LevelWords() {}

    /** For instance "keep warm". */
    public static String of(HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> "too cool";
            case KEEP_WARM -> "keep warm";
            case SIMMER -> "simmer";
            case BOIL -> "boil";
            case FAST_BOIL -> "fast boil";
        };
    }

    /** One letter for narrow tables: c, w, s, b, f. */
    public static String letter(HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> "c";
            case KEEP_WARM -> "w";
            case SIMMER -> "s";
            case BOIL -> "b";
            case FAST_BOIL -> "f";
        };
    }

    /** What the letters mean. */
    public static String letters() {
        return "c too cool to hold food, w keep warm, s simmer, b boil, f fast boil";
    }
}

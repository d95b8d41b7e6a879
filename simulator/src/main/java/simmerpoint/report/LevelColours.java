package simmerpoint.report;

import java.awt.Color;
import simmerpoint.heat.HeatLevel;

/**
 * Colours of the heat levels, from a cool near-white over yellow to a warm brown: lightness falls from level to level, so
 * that they keep their order for the colour-blind and on grey paper; bands that are wide enough carry their name as well.
 */
final class LevelColours {
    private LevelColours() {}

    static Color of(HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> new Color(0xF3F7FC);
            case KEEP_WARM -> new Color(0xD3E3F3);
            case SIMMER -> new Color(0xEBD27A);
            case BOIL -> new Color(0xEFA35A);
            case FAST_BOIL -> new Color(0xCF7340);
        };
    }
}

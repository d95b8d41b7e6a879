package simmerpoint.safety.risk;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What light can do from a certain flux on, mildest first. Fluxes count light of mirrors and sun together.
 *
 * <p>Fire: mean fluxes over 32, 10 and 2 s that ignite dry leaves and newspaper, derived here from the radiant exposures of S.
 * Glasstone, P. J. Dolan, The Effects of Nuclear Weapons, 3rd ed. 1977, tables 7.35 and 7.40 (light much like sunlight,
 * section 7.01; 80 % of the energy within about 2, 10 and 32 s), good to perhaps ±50 % in the open; charring of wood from
 * section 7.38. Wood that is left: least flux for ignition 4.3 kW/m² in one study (V. Babrauskas, Ignition of wood, 2001);
 * plywood smoulders at 7.5 kW/m² within 8 h (Fire Safety Journal, 2006). People: 1.6 kW/m² is the limit of lasting
 * exposure with clothing (API 521: 1577 W/m²); pain after about half a minute at 2.5 by {@link SkinTimes}.
 */
public enum Hazard {
    /** Skin gets unpleasantly hot. */
    DISCOMFORT("discomfort", 1.6),
    /** Skin hurts within about half a minute. */
    PAIN("pain", 2.5),
    /** Wood can smoulder if left for long. */
    SMOULDER("smoulder", 4.3),
    /** Dry leaves, grass and newspaper catch fire within half a minute. */
    TINDER("tinder", 8),
    /** The same within ten seconds; wood chars within half a minute. */
    CHAR("char", 20),
    /** The same within two seconds. */
    FLASH("flash", 70),
    /** Paper, dark cloth and thin plywood too. */
    BURST("burst", 150);

    private final String word;
    private final double kilowatts;

    Hazard(String word, double kilowatts) {
        this.word = word;
        this.kilowatts = kilowatts;
    }

    /** Its name in files and on the command line. */
    public String word() {
        return word;
    }

    /** The least flux that does it, W/m². */
    public double wattsPerSquareMetre() {
        return 1000 * kilowatts;
    }

    /** The worst that light of this flux, W/m², does; empty if it does nothing. */
    public static Optional<Hazard> worst(double wattsPerSquareMetre) {
        return Stream.of(values())
                .filter(hazard -> wattsPerSquareMetre > hazard.wattsPerSquareMetre())
                .reduce((mild, worse) -> worse);
    }

    /** The worst that light of this flux, W/m², does to things; empty if it does nothing to them. */
    public static Optional<Hazard> ofFire(double wattsPerSquareMetre) {
        return worst(wattsPerSquareMetre).filter(hazard -> hazard.compareTo(SMOULDER) >= 0);
    }

    /** The one with that name. */
    public static Optional<Hazard> find(String word) {
        return Stream.of(values()).filter(hazard -> hazard.word.equals(word)).findFirst();
    }

    /** All names, for messages. */
    public static String words() {
        return Arrays.stream(values()).map(Hazard::word).collect(Collectors.joining(", "));
    }
}

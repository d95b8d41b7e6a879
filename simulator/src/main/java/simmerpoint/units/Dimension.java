package simmerpoint.units;

/** What kind of quantity a number stands for, with the words that messages use for it. */
public enum Dimension {
    /** SI: m. */
    LENGTH("a length", "0.9 m or 36 in"),
    /** SI: rad. */
    ANGLE("an angle", "0.25° or 4 mrad"),
    /** A plain number or per cent; 1 = all. */
    SHARE("a share", "0.85 or 85 %"),
    /** A plain number without unit. */
    NUMBER("a plain number", "3.2"),
    /** A whole number without unit. */
    COUNT("a whole number", "24"),
    /** SI: W/m². */
    IRRADIANCE("an irradiance", "850 W/m² or 0.85 kW/m²"),
    /** SI: s. */
    TIME("a time", "10 min or 600 s"),
    /** SI: K. */
    TEMPERATURE("a temperature", "95 °C or 203 °F"),
    /** SI: K, as a difference: 6 °C is 6 K. */
    TEMPERATURE_DIFFERENCE("a difference of temperatures", "6 K or 11 °F"),
    /** SI: W. */
    POWER("a power", "400 W or 0.4 kW"),
    /** SI: kg. */
    MASS("a mass", "1.5 kg or 3.3 lb"),
    /** SI: m³. */
    VOLUME("a volume", "2 l or 0.5 gal"),
    /** SI: kg; water may be given by its volume too, a litre for a kilogram. */
    WATER("an amount of water", "1.5 l or 1.5 kg"),
    /** Steam off an area of water, in kg/(h·m²) as heat levels count it, which is 1/3600 of the SI unit. */
    STEAM("a rate of steam", "6 kg/(h·m²)"),
    /** SI: m/s. */
    SPEED("a speed", "2 m/s or 5 mph"),
    /** SI: Pa. */
    PRESSURE("a pressure", "20 Pa"),
    /** SI: N/m, a force for every metre of width. */
    TENSION("a tension", "80 N/m");

    private final String words;
    private final String example;

    Dimension(String words, String example) {
        this.words = words;
        this.example = example;
    }

    /** With its article, for instance "a length". */
    public String words() {
        return words;
    }

    /** How such a quantity may be written, for instance "0.9 m or 36 in". */
    public String example() {
        return example;
    }
}

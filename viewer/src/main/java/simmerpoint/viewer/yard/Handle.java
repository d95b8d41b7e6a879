package simmerpoint.viewer.yard;

import simmerpoint.units.Dimension;

/** What can be taken hold of in the side view. */
public enum Handle {
    /** The pan along the dish's axis. */
    PULL_BACK(
            "stand.pull-back",
            Dimension.LENGTH,
            "Pull-back",
            "Pull the pan along the dish\u2019s axis: away from the dish the light spreads"),
    /** The pan up and down. */
    RAISE("stand.raise", Dimension.LENGTH, "Raise", "Raise or lower the pan"),
    /** The dish along the ground. */
    SLIDE("stand.slide", Dimension.LENGTH, "Slide", "Slide the dish along the ground; the pan stays where it is"),
    /** The dish about its mount. */
    TURN("aim.turn.up", Dimension.ANGLE, "Turn", "Point the dish off the sun, upwards or downwards"),
    /** The sun along its way. */
    SUN("sun.elevation", Dimension.ANGLE, "Sun\u2019s height", "Move the sun up or down; the dish follows it");

    private final String key;
    private final Dimension dimension;
    private final String title;
    private final String meaning;

    Handle(String key, Dimension dimension, String title, String meaning) {
        this.key = key;
        this.dimension = dimension;
        this.title = title;
        this.meaning = meaning;
    }

    /** The key of the scenario that it changes; for a sun that place and time put there, see {@link Moves}. */
    public String key() {
        return key;
    }

    /** Whether it moves by lengths; else by angles. */
    public boolean isLength() {
        return dimension == Dimension.LENGTH;
    }

    /** What the quantity is called. */
    public String title() {
        return title;
    }

    /** What it does, in one line. */
    public String meaning() {
        return meaning;
    }

    /** Its name as a node: yard-pull-back. */
    public String id() {
        return "yard-" + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}

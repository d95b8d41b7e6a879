package simmerpoint.scenario;

/**
 * One thing that is wrong with a scenario.
 *
 * @param line of the file, counted from 1; 0 if the whole file is meant or the value was not written in it
 * @param key full path of the key, for instance dish.surface.sectors; empty if the whole file is meant
 * @param text what was found and what is allowed, without file, line and key
 * @param missing whether something is wrong by not being there at all
 */
public record Problem(int line, String key, String text, boolean missing) {
    /** With something that stands in the file. */
    public Problem(int line, String key, String text) {
        this(line, key, text, false);
    }

    /** The whole sentence, with the name of the file in front. */
    public String sentence(String file) {
        StringBuilder place = new StringBuilder(file);
        if (line > 0) {
            place.append(", line ").append(line);
        }
        if (!key.isEmpty()) {
            place.append(", ").append(key);
        }
        return place.append(": ").append(text).toString();
    }
}

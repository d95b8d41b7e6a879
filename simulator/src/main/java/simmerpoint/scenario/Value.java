package simmerpoint.scenario;

/**
 * The value of one key.
 *
 * @param si the number in SI units or radians, the word, the text, whether on, the date, time or zone, or the name of
 *     the file
 * @param typed as it stands in the file, or the default as it would
 * @param line where it stands; 0 for a default or a value that was not written in the file
 * @param given whether it was given at all
 */
record Value(Object si, String typed, int line, boolean given) {
    double number() {
        return ((Number) si).doubleValue();
    }

    int count() {
        return (Integer) si;
    }

    String text() {
        return (String) si;
    }
}

package simmerpoint.scenario.checks;

import java.util.List;
import java.util.stream.Stream;
import simmerpoint.scenario.values.ScenarioValues;

/** Which sections a file leaves to their defaults. */
final class DefaultSections {
    private static final List<String> ALWAYS = List.of("mirror", "sun", "aim", "stand");
    private static final List<String> FOR_PANS = List.of("pan", "air", "heat-levels");

    private DefaultSections() {}

    /** The sections in question of which the file says nothing. */
    static List<String> of(ScenarioValues values) {
        boolean timed = values.hasSection("place") && values.hasSection("when");
        return Stream.of(
                        ALWAYS.stream().filter(section -> !(timed && section.equals("sun"))),
                        values.hasSection("plane") ? Stream.<String>empty() : FOR_PANS.stream(),
                        timed ? Stream.of("sky") : Stream.<String>empty())
                .flatMap(sections -> sections)
                .filter(section -> !values.hasSection(section))
                .toList();
    }
}

package simmerpoint.scenario;

import java.nio.file.Path;
import java.util.Map;

/**
 * One scenario text and what it becomes with some of its keys changed.
 *
 * @param name what to call it in messages
 * @param text the whole scenario
 * @param baseFolder where other files that it names are looked for
 */
public record ScenarioVariants(String name, String text, Path baseFolder) {
    /**
     * The scenario with values replaced, for work that needs the sun of one moment.
     *
     * @param keys value by full path of the key, each as typed in the file
     */
    public Scenario with(Map<String, String> keys) throws ScenarioException {
        return ScenarioReader.parse(name, text, baseFolder, keys).atOneMoment();
    }

    /** The text with values replaced, comments kept: parses to what {@link #with} gives. */
    public String textWith(Map<String, String> keys) {
        return ScenarioWriter.write(text, keys);
    }
}

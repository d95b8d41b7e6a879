package simmerpoint.scenario.values;

import java.nio.file.Path;

/**
 * Where the values of a scenario were read from.
 *
 * @param name what to call it in messages
 * @param folder where other files that it names are looked for
 * @param text the whole scenario as it was read
 */
public record ScenarioSource(String name, Path folder, String text) {}

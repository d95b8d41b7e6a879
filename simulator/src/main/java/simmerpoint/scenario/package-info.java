/**
 * The scenario file: one description of every key ({@link simmerpoint.scenario.Keys}), the reader that knows the line of
 * everything it refuses, the writer that changes values and leaves comments and layout alone, and the checks across keys. The only package that knows what the file looks like; whoever stands
 * left of it sees {@link simmerpoint.scenario.Scenario}'s SI values only.
 */
package simmerpoint.scenario;

/**
 * The text of a scenario file: a tree of what stands where, and changes of single keys that leave comments and layout alone. The
 * only package that knows YAML.
 */
package simmerpoint.scenario.yaml;

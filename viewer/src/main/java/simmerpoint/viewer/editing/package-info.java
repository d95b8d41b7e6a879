/**
 * Every key of the scenario by a control, grouped by what a builder asks. What stands at a key, what is allowed and what is
 * wrong comes from the one description of keys and from the document; a model per key ({@link
 * simmerpoint.viewer.editing.KeyModel}) knows no control, a row per key shows it. Not here: files, and what the scenario
 * will do.
 */
package simmerpoint.viewer.editing;

/**
 * Reads scenarios from files, standard input, a text or the example that is built in.
 */
package simmerpoint.scenario.file;

/**
 * The open scenario: its text, undo history, problems, and its file. Offers properties, knows no control; single-threaded.
 */
package simmerpoint.viewer.document;

/** The answer of the command panels: which panels send their light past the pan, and how to turn them. */
package simmerpoint.answer.panels;

/**
 * The file a builder writes: one description of every key (name, unit, range, default, one sentence), which
 * reader, checker and printed examples all share, and the checked values that come out in SI. Every complaint
 * about a file is made here, with line and key. Nothing to the left of this package knows that there is a
 * file; nothing here traces.
 */
package simmerpoint.scenario;

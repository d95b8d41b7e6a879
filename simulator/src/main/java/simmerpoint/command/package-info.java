/**
 * The command line: options in, exit code out. The only package that prints, and the only one that knows the
 * library for command lines. It wires the others together and turns every failure into one clear sentence;
 * anything worth testing without a terminal belongs further left.
 */
package simmerpoint.command;

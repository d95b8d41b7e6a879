/**
 * Files that people wrote and that the program reads: their text, and the one exception that says what is wrong with them.
 * What a file means belongs to the package whose file it is; the scenario itself to {@code scenario}.
 */
package simmerpoint.input;

/**
 * Sentences as values: what a study found, in watts, minutes and centimetres first, with no more digits than
 * the figures deserve, in metric or inch units. The same words serve terminal and window, so nothing here
 * knows about columns, colours or where the text goes.
 */
package simmerpoint.answer;

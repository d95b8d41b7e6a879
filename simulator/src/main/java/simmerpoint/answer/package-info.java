/**
 * Sentences as values, written by hand: what a study found, in watts, minutes and centimetres first, with no more digits
 * than the figures deserve, in metric or inch units. A package for each question, named as its command and its study; what
 * several share is in {@code words}. The same words serve terminal, page and window, so nothing here knows about columns,
 * colours or where the text goes, and nothing is worked out here.
 */
package simmerpoint.answer;

/**
 * Colours and sizes of the window in light and dark, as style sheets, and the same colours as values for what is drawn
 * by hand. Not here: colours that stand for watts or heat levels, which are the reports' own.
 */
package simmerpoint.viewer.theme;

/**
 * Mirrors given by measured points: reading their table, and the smooth shape through them. Nothing here knows how a dish is cut or lit.
 */
package simmerpoint.dish.points;

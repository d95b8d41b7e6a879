/**
 * The light around a dish, from traced rays: even cells of boxes in the yard, what falls on a surface there, and with what error.
 */
package simmerpoint.safety.field;

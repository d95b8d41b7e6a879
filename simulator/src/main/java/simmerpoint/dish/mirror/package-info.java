/** What covers the panels: the figures of one mirror, and the catalogue of materials with a source in every row. */
package simmerpoint.dish.mirror;

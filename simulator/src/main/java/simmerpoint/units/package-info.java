/**
 * Parsing and formatting of quantities with units, metric and inch. Inside the program everything is SI and radians.
 * Nothing in this package depends on the default locale.
 */
package simmerpoint.units;

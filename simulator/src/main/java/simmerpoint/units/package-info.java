/**
 * Reading and writing quantities with their units, metric and inch. Inside the program everything is SI and radians;
 * numbers get their unit back only here. Nothing in this package depends on the machine's language setting.
 */
package simmerpoint.units;

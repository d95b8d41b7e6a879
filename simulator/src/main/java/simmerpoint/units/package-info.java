/**
 * Reading and writing quantities: a number with its unit on one side, SI and radians on the other, metric or
 * inch as asked. The meaning, the range and the name of a quantity in a file belong to the description of the
 * scenario's keys, not here; sentences belong to the answer.
 */
package simmerpoint.units;

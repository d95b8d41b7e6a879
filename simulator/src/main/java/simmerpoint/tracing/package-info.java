/**
 * The ray loop: sampled sunlight in, reflected light out, as mirror point, incoming and outgoing direction
 * and watts, including panels that hide each other. The pan is not known here, so that light traced once can
 * be caught at any number of places. Nothing here reads a file, formats a number or checks the input of
 * users, which is trusted by now.
 */
package simmerpoint.tracing;

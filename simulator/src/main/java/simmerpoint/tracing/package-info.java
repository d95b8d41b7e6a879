/**
 * The ray loop: sampled sunlight in, reflected light out, as mirror point, incoming and reflected direction and watts,
 * including panels that block each other. The pan is not known here, so light cast once can be caught at any number of
 * positions. Input is assumed to be valid.
 */
package simmerpoint.tracing;

/** Glare of the mirror seen from a place of the yard: a published metric of the light on the retina, to be read as an indication. */
package simmerpoint.safety.eyes;

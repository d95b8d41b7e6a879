/** A dish that is left uncovered and no longer aimed: where its hot spot walks, and how it is parked best. */
package simmerpoint.safety.parked;

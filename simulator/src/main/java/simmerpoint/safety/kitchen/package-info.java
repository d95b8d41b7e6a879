/** What the light does to food, pan and handle. Temperatures are worked out by {@code study.trace}. */
package simmerpoint.safety.kitchen;

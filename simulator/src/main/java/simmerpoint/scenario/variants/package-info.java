/**
 * Several scenarios that are held against each other: every combination of varied keys, and the keys in which they differ.
 */
package simmerpoint.scenario.variants;

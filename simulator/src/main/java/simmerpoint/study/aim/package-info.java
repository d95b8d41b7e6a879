/**
 * How exactly a dish must be aimed, how long until it must be aimed again, and what aiming ahead of the sun buys.
 */
package simmerpoint.study.aim;

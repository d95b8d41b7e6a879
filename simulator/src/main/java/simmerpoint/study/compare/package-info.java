/**
 * Several cookers side by side.
 */
package simmerpoint.study.compare;

/**
 * What each flaw of a cooker costs, and how the watts change when one parameter changes by a step.
 */
package simmerpoint.study.budget;

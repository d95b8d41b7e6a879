/**
 * What each flaw costs and what one step of a parameter changes.
 */
package simmerpoint.answer.budget;

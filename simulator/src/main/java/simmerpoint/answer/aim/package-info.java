/**
 * How often and how exactly to aim.
 */
package simmerpoint.answer.aim;

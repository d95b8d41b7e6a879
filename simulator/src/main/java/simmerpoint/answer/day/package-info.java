/**
 * When it cooks on a day and through a year, and how dish and pan then stand.
 */
package simmerpoint.answer.day;

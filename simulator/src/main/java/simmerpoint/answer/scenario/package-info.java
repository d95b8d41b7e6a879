/**
 * What a scenario says, to see whether its file was understood as meant.
 */
package simmerpoint.answer.scenario;

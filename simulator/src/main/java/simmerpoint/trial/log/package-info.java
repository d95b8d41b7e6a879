/** Logs of a trial as files: readings of water, air, sunlight and wind over time. What cannot be read is refused with its line; nothing is guessed. */
package simmerpoint.trial.log;

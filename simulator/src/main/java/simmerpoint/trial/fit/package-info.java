/**
 * Logs held against the model of their scenario: every drawn cooker of the likely range is heated by the light of the log, and which flaw
 * explains what is missing is asked of Gaussian laws fitted to these cookers.
 */
package simmerpoint.trial.fit;

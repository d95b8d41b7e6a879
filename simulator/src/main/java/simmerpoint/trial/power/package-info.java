/** What published test procedures make of logs: the standard's cooking power, and the two factors of the protocol for paraboloid cookers. */
package simmerpoint.trial.power;

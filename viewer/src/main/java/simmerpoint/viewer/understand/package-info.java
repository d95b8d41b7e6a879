/** The view for whoever asks why: spot, panels, ledger, doubt, aiming, burns, logs of the built cooker. Not here: the studies themselves. */
package simmerpoint.viewer.understand;

/** The view for whoever asks why: spot, panels, ledger, doubt, aiming. Not here: the studies themselves. */
package simmerpoint.viewer.understand;

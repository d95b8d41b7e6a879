/** The spot of light on a card: its outline or photographs at measured distances, held against the traced one. */
package simmerpoint.trial.spot;

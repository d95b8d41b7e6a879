/**
 * What a dish gives to its pan: watts, water, ledger, spot.
 */
package simmerpoint.answer.trace;

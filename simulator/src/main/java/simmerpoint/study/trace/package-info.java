/**
 * One traced scenario: replicates cast and caught on several threads, what is asked for ({@code TraceOptions}), progress and
 * cancelling, and the result with its ledger, spot, maps and heat. All other studies are made of such traces.
 */
package simmerpoint.study.trace;

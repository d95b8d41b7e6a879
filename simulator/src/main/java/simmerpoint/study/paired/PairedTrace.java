package simmerpoint.study.paired;

import simmerpoint.study.trace.TraceResult;

/**
 * A whole trace and its watts replicate by replicate.
 *
 * @param trace with ledger, spot and maps
 * @param watts of the same rays
 */
public record PairedTrace(TraceResult trace, PairedWatts watts) {}

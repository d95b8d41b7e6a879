package simmerpoint.study.trace;

/**
 * How to trace.
 *
 * @param rays number of rays; with a precision, the bound on rays
 * @param precision wanted standard error of the caught watts as a share of them (0.002 = 0.2 %), or 0 for none
 * @param seed of scrambles and build errors
 * @param threads to use, at least 1
 * @param peakDiscRadius radius of the disc the peak is averaged over, m
 */
public record TraceOptions(long rays, double precision, long seed, int threads, double peakDiscRadius) {
    /** Rays where none are asked for. */
    public static final long DEFAULT_RAYS = 1L << 17;

    /** Seed where none is asked for. */
    public static final long DEFAULT_SEED = 1;

    /** Radius of the peak disc where none is asked for, m. */
    public static final double DEFAULT_PEAK_DISC_RADIUS = 0.010;

    /** Everything as if nothing were asked. */
    public static TraceOptions defaults() {
        return new TraceOptions(
                DEFAULT_RAYS, 0, DEFAULT_SEED, Runtime.getRuntime().availableProcessors(), DEFAULT_PEAK_DISC_RADIUS);
    }

    /** The same with another number of rays. */
    public TraceOptions withRays(long n) {
        return new TraceOptions(n, precision, seed, threads, peakDiscRadius);
    }

    /** The same with another seed. */
    public TraceOptions withSeed(long s) {
        return new TraceOptions(rays, precision, s, threads, peakDiscRadius);
    }

    /** The same with another number of threads. */
    public TraceOptions withThreads(int n) {
        return new TraceOptions(rays, precision, seed, n, peakDiscRadius);
    }

    /** The same with a wanted precision. */
    public TraceOptions withPrecision(double p) {
        return new TraceOptions(rays, p, seed, threads, peakDiscRadius);
    }

    /** The same with another peak disc. */
    public TraceOptions withPeakDiscRadius(double r) {
        return new TraceOptions(rays, precision, seed, threads, r);
    }
}

package simmerpoint.benchmark;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The yardstick for {@link TraceBenchmark}: the textbook loop over the dish {@link Dishes#DISC}, one pseudo-random ray at a
 * time with sine, cosine and logarithm, that counts hits and nothing else. One operation is one ray.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@jmh -Djmh.args="PlainLoopBenchmark"}
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlainLoopBenchmark {
    private static final int RAYS = 1 << 18;
    private static final int SECTORS = 24;
    private static final int RINGS = 6;
    private static final double HALF = Math.PI / SECTORS;
    private static final double FOCUS = 0.8;
    private static final double HUB = 0.03;
    private static final double RIM = 0.6;

    private final SplittableRandom random = new SplittableRandom(1);

    /** Hits among {@link #RAYS} rays. */
    @Benchmark
    @OperationsPerInvocation(RAYS)
    public int hits() {
        int hits = 0;
        for (int k = 0; k < RAYS; k++) {
            hits += hit() ? 1 : 0;
        }
        return hits;
    }

    private boolean hit() {
        int sector = random.nextInt(SECTORS);
        double corner = Math.sqrt(HUB * HUB + (RIM * RIM - HUB * HUB) * random.nextDouble());
        double x = corner * Math.cos(HALF);
        double y = (2 * random.nextDouble() - 1) * x * Math.tan(HALF);
        int ring = (int) ((corner - HUB) / (RIM - HUB) * RINGS);
        double inner = HUB + ring * (RIM - HUB) / RINGS;
        double outer = HUB + (ring + 1) * (RIM - HUB) / RINGS;
        double slope = (outer + inner) / (4 * FOCUS * Math.cos(HALF));
        double z = inner * inner / (4 * FOCUS) + (x - inner * Math.cos(HALF)) * slope;
        double c = Math.cos((2 * sector + 1) * HALF);
        double s = Math.sin((2 * sector + 1) * HALF);
        double nz = 1 / Math.sqrt(1 + slope * slope);
        return lands(x * c - y * s, x * s + y * c, z, -slope * nz * c, -slope * nz * s, nz);
    }

    private boolean lands(double px, double py, double pz, double nx, double ny, double nz) {
        double off = 4.65e-3 * Math.sqrt(random.nextDouble());
        double round = 2 * Math.PI * random.nextDouble();
        double sx = Math.sin(off) * Math.cos(round);
        double sy = Math.sin(off) * Math.sin(round);
        double sz = Math.cos(off);
        double tilt = 5e-3 * Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
        double way = 2 * Math.PI * random.nextDouble();
        double mx = nx + tilt * Math.cos(way);
        double my = ny + tilt * Math.sin(way);
        double scale = 1 / Math.sqrt(mx * mx + my * my + nz * nz);
        double twice = 2 * scale * scale * (mx * sx + my * sy + nz * sz);
        double rx = twice * mx - sx;
        double ry = twice * my - sy;
        double rz = twice * nz - sz;
        double t = (FOCUS - pz) / rz;
        double qx = px + t * rx;
        double qy = py + t * ry;
        return qx * qx + qy * qy <= 0.06 * 0.06;
    }
}

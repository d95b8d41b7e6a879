package simmerpoint.dish.points;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.IntStream;
import simmerpoint.input.InputFileException;

/** Finds what is wrong with measured points, and makes one of those of the same place: too few, points along a line, one far off all others, no dish at all. */
final class PointChecks {
    /** Points nearer to each other than this share of the width are one place. */
    private static final double SAME = 1e-6;

    /** An outline thinner than this share of its length is a line. */
    private static final double THIN = 0.02;

    /** A point farther off a smooth surface through its neighbours than this share of the width may be a slip, m/m. */
    private static final double FAR = 0.005;

    /** If it is this many times as far off as half of all points are, too. */
    private static final double OUTSTANDING = 12;

    private static final int CHECKED = 20_000;
    private static final int LEAST_POINTS = 12;

    private final Path file;
    private final MeasuredPoints points;
    private final int[] lines;

    PointChecks(Path file, MeasuredPoints points, int[] lines) {
        this.file = file;
        this.points = points;
        this.lines = lines;
    }

    /** The shape of points with which nothing is wrong; of places measured more than once that of their means. */
    MeasuredShape shape() throws InputFileException {
        double width = spread(points.x());
        double height = spread(points.y());
        RepeatedPoints repeated = RepeatedPoints.of(points, SAME * Math.max(width, height));
        return new PointChecks(file, repeated.once(), repeated.kept(lines)).shape(width, height, repeated.apart());
    }

    private MeasuredShape shape(double width, double height, double apart) throws InputFileException {
        if (points.count() < LEAST_POINTS) {
            throw new InputFileException(
                    file, points.count() + " points are too few; measure at least " + LEAST_POINTS + ".");
        }
        if (!(Math.min(width, height) > THIN * Math.max(width, height))) {
            throw new InputFileException(
                    file, "all points lie along one line; a mirror has points on both sides of it.");
        }
        BestParaboloid best = BestParaboloid.of(points);
        if (!(best.focalLength() > 0 && best.focalLength() < Double.POSITIVE_INFINITY)) {
            throw new InputFileException(
                    file,
                    "these points do not gather light in front of them: seen from the sun the mirror bulges out. z must rise"
                            + " from the middle to the rim; call the column depth if it is counted down from a straight edge.");
        }
        farOff(best, Math.max(width, height));
        return new MeasuredShape(String.valueOf(file.getFileName()), points, apart);
    }

    private static double spread(double[] values) {
        return Arrays.stream(values).max().orElse(0)
                - Arrays.stream(values).min().orElse(0);
    }

    /** Each point against a smooth surface through the others about it; of very many only every so many-th. */
    private void farOff(BestParaboloid best, double width) throws InputFileException {
        LocalQuadratic local = new LocalQuadratic(points, best, new NearestPoints(points.x(), points.y()));
        int every = 1 + points.count() / CHECKED;
        int[] tried =
                IntStream.iterate(0, i -> i < points.count(), i -> i + every).toArray();
        double[] off = new double[tried.length];
        double[] found = new double[3];
        for (int k = 0; k < tried.length; k++) {
            int i = tried[k];
            local.at(points.x()[i], points.y()[i], i, found);
            off[k] = Math.abs(points.z()[i] - found[0]);
        }
        int worst = IntStream.range(0, off.length)
                .boxed()
                .max(Comparator.comparingDouble(k -> off[k]))
                .orElseThrow();
        double usual =
                Arrays.stream(off).sorted().skip(off.length / 2).findFirst().orElse(0);
        if (off[worst] > FAR * width && off[worst] > OUTSTANDING * usual) {
            throw new InputFileException(
                    file,
                    lines[tried[worst]],
                    String.format(
                            Locale.ROOT,
                            "this point lies %.0f mm off a smooth surface through its neighbours; measure it again or take the"
                                    + " row out.",
                            1000 * off[worst]));
        }
    }
}

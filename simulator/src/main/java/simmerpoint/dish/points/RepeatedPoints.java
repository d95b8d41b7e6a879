package simmerpoint.dish.points;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Points of which some are of the same place, measured again or copied twice.
 *
 * @param once the points, those of one place as their mean
 * @param last of each the number of the last row that is in it
 * @param apart the most by which heights of the same place differ, m; 0 where no place was measured twice
 */
record RepeatedPoints(MeasuredPoints once, int[] last, double apart) {
    /** A cell of a lattice as fine as places are told apart. */
    private record Place(long x, long y) {}

    /** Places nearer to each other than {@code same} are one, m. */
    static RepeatedPoints of(MeasuredPoints points, double same) {
        Map<Place, List<Integer>> places = new LinkedHashMap<>();
        for (int i = 0; i < points.count(); i++) {
            Place place = new Place(cell(points.x()[i], same), cell(points.y()[i], same));
            places.computeIfAbsent(place, none -> new ArrayList<>(1)).add(i);
        }
        double[][] means = new double[3][places.size()];
        int[] last = new int[places.size()];
        double apart = 0;
        int k = 0;
        for (List<Integer> rows : places.values()) {
            means[0][k] = mean(points.x(), rows);
            means[1][k] = mean(points.y(), rows);
            means[2][k] = mean(points.z(), rows);
            apart = Math.max(apart, spread(points.z(), rows));
            last[k++] = rows.get(rows.size() - 1);
        }
        return new RepeatedPoints(new MeasuredPoints(means[0], means[1], means[2]), last, apart);
    }

    private static long cell(double at, double same) {
        return same > 0 ? Math.round(at / same) : 0;
    }

    private static double mean(double[] values, List<Integer> rows) {
        return rows.stream().mapToDouble(i -> values[i]).average().orElseThrow();
    }

    private static double spread(double[] values, List<Integer> rows) {
        return rows.stream().mapToDouble(i -> values[i]).max().orElseThrow()
                - rows.stream().mapToDouble(i -> values[i]).min().orElseThrow();
    }

    /** Of figures of the rows those of the last row in each point. */
    int[] kept(int[] ofRows) {
        return Arrays.stream(last).map(row -> ofRows[row]).toArray();
    }
}

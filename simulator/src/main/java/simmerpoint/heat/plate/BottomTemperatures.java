package simmerpoint.heat.plate;

/**
 * Temperatures of the bottom of a pan.
 *
 * @param middleCelsius mean within half of the radius
 * @param edgeCelsius mean over the outer tenth of the radius
 * @param hottestCelsius of the hottest place
 * @param hottestX where that is from the middle, m, in the target frame
 * @param hottestY the same, m
 */
public record BottomTemperatures(
        double middleCelsius, double edgeCelsius, double hottestCelsius, double hottestX, double hottestY) {
    private static final double MIDDLE = 0.5;
    private static final double EDGE = 0.9;

    /** Of the cells of a mesh. */
    static BottomTemperatures of(PanMesh mesh, double[] celsius) {
        int hottest = 0;
        for (int cell = 0; cell < mesh.bottomRings() * mesh.sectors(); cell++) {
            hottest = celsius[cell] > celsius[hottest] ? cell : hottest;
        }
        double r = mesh.middleRadius(hottest / mesh.sectors());
        double angle = mesh.angle(hottest % mesh.sectors());
        return new BottomTemperatures(
                mean(mesh, celsius, 0, MIDDLE),
                mean(mesh, celsius, EDGE, 1),
                celsius[hottest],
                r * Math.cos(angle),
                r * Math.sin(angle));
    }

    /** Distance of the hottest place from the middle, m. */
    public double hottestRadius() {
        return Math.hypot(hottestX, hottestY);
    }

    /** How much hotter the hottest place is than the edge, K. */
    public double spreadKelvin() {
        return hottestCelsius - edgeCelsius;
    }

    private static double mean(PanMesh mesh, double[] celsius, double from, double to) {
        double sum = 0;
        double area = 0;
        for (int ring = 0; ring < mesh.bottomRings(); ring++) {
            double share = mesh.middleRadius(ring) / mesh.radius();
            for (int sector = 0; sector < mesh.sectors() && share >= from && share < to; sector++) {
                sum += mesh.area(ring) * celsius[ring * mesh.sectors() + sector];
                area += mesh.area(ring);
            }
        }
        return sum / area;
    }
}

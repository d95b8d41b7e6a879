package simmerpoint.dish.shape;

/**
 * A saddle, 2h·xy/R²: h too high at the rim's upper right and lower left, h too low at the other two corners.
 *
 * @param metres h
 * @param rim radius, m
 */
record Twist(double metres, double rim) implements Deformation {
    @Override
    public void add(double x, double y, Displacement to) {
        double perSquare = 2 * metres / (rim * rim);
        to.add(perSquare * x * y, perSquare * y, perSquare * x);
    }
}

package simmerpoint.dish.shape;

/**
 * A curve that has opened: −h·r²/R², which makes z = r²/4f the parabola of the focal length f' with 1/f' = 1/f − 4h/R².
 *
 * @param metres how much shallower the dish is
 * @param rim its radius, m
 */
record Springback(double metres, double rim) implements Deformation {
    @Override
    public void add(double x, double y, Displacement to) {
        double perSquare = -metres / (rim * rim);
        to.add(perSquare * (x * x + y * y), 2 * perSquare * x, 2 * perSquare * y);
    }
}

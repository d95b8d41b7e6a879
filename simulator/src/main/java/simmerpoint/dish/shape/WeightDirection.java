package simmerpoint.dish.shape;

/**
 * Where weight pulls, in the dish frame: back along the axis and towards the dish's lower edge. The upward direction there is (cos α, 0,
 * sin α), α the elevation of the axis.
 *
 * @param back share of the weight that pulls along the axis, away from the light
 * @param down share that pulls towards −x
 */
record WeightDirection(double back, double down) {
    /** Of a dish whose axis points so high, rad. */
    static WeightDirection at(double elevation) {
        return new WeightDirection(Math.sin(elevation), Math.cos(elevation));
    }
}

package simmerpoint.drawing.cooker;

import simmerpoint.geometry.Vec;

/**
 * Where places of the dish come on a view along its axis from the sun's side: upper edge up, so +y of the dish frame, to the right of
 * someone who stands behind the dish, comes to the left.
 *
 * @param middleX where the axis lies, units
 * @param middleY the same, downwards
 * @param perMetre units per metre
 */
record FrontFrame(double middleX, double middleY, double perMetre) {
    double[] at(Vec place) {
        return at(place.x(), place.y());
    }

    double[] at(double x, double y) {
        return new double[] {middleX - y * perMetre, middleY - x * perMetre};
    }
}

package simmerpoint.dish.cut;

/**
 * The plane that touches the paraboloid z = r²/4f above the plan point (cx, cy), with two unit axes in it: what +x and
 * +y become under the smallest rotation from +z to its normal (nx, ny, nz).
 */
record TangentPlane(double cx, double cy, double cz, double nx, double ny, double nz) {
    static TangentPlane at(double cx, double cy, double focalLength) {
        double gx = cx / (2 * focalLength);
        double gy = cy / (2 * focalLength);
        double nz = 1 / Math.sqrt(1 + gx * gx + gy * gy);
        return new TangentPlane(cx, cy, 0.5 * (gx * cx + gy * cy), -gx * nz, -gy * nz, nz);
    }

    /** x in plan of the point (a, b) of the plane, from its centre. */
    double planX(double a, double b) {
        double k = 1 / (1 + nz);
        return a * (1 - nx * nx * k) - b * nx * ny * k;
    }

    /** y in plan of the point (a, b) of the plane, from its centre. */
    double planY(double a, double b) {
        double k = 1 / (1 + nz);
        return b * (1 - ny * ny * k) - a * nx * ny * k;
    }

    /** Its height above a point in plan, from the dish's vertex. */
    double heightAbove(double x, double y) {
        return cz - (nx * (x - cx) + ny * (y - cy)) / nz;
    }

    /** Height of the point (a, b) of the plane, from the dish's vertex. */
    double height(double a, double b) {
        return cz - a * nx - b * ny;
    }
}

package simmerpoint.truth;

import simmerpoint.geometry.Vec;

/**
 * Sun and bare disc as the dish itself sees them: all vectors in the frame of the dish as it really points. Written
 * from the definitions of frames, drift, turn and moves alone; shares no code with the set-up under test.
 *
 * @param sun towards the sun's middle
 * @param across a unit vector square to it
 * @param along another, square to both
 * @param middle the disc's middle, m
 * @param normal of the disc, away from the dish
 * @param first first axis in the disc's plane
 * @param second second axis in the disc's plane
 */
record Bench(Vec sun, Vec across, Vec along, Vec middle, Vec normal, Vec first, Vec second) {
    /** The bench of a scene whose target is a bare disc. */
    static Bench of(Scene scene, double lean) {
        double a = scene.elevation();
        double f = scene.dish().focalLengthMetres();
        double p = scene.stand().pullBackMetres();
        double s = scene.stand().slideMetres();
        double h = scene.stand().raiseMetres();
        Vec middle = new Vec(
                -s * Math.sin(a) + h * Math.cos(a),
                scene.stand().sideMetres(),
                f + p + s * Math.cos(a) + h * Math.sin(a));
        Vec sun = onSky(scene.aim().driftUpRadians(), scene.aim().driftSideRadians());
        Vec normal = new Vec(Math.sin(lean), 0, Math.cos(lean));
        Vec first = new Vec(Math.cos(lean), 0, -Math.sin(lean));
        Vec second = new Vec(0, 1, 0);
        double up = scene.aim().turnUpRadians();
        double side = scene.aim().turnSideRadians();
        Vec mount = new Vec(0, 0, -scene.aim().mountMetres());
        Vec seen = turnedBack(middle.minus(mount), up, side).plus(mount);
        return of(
                turnedBack(sun, up, side),
                seen,
                turnedBack(normal, up, side),
                turnedBack(first, up, side),
                turnedBack(second, up, side));
    }

    private static Bench of(Vec sun, Vec middle, Vec normal, Vec first, Vec second) {
        Vec away = Math.abs(sun.x()) < 0.5 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
        Vec across = away.minus(sun.times(away.dot(sun)));
        across = across.times(1 / across.length());
        return new Bench(sun, across, sun.cross(across), middle, normal, first, second);
    }

    /** The bench seen by a dish that has been turned about its axis by {@code angle}. */
    Bench turnedAboutAxis(double angle) {
        return of(
                aboutAxis(sun, angle),
                aboutAxis(middle, angle),
                aboutAxis(normal, angle),
                aboutAxis(first, angle),
                aboutAxis(second, angle));
    }

    /**
     * Direction of the ray that comes from the place (u, v) on the sun. For a uniform sun whose light is weighed as on
     * a plate square to the sun's middle, (u, v) is uniform over a disc of radius sin θ.
     */
    Vec ray(double u, double v) {
        double w = Math.sqrt(1 - u * u - v * v);
        return across.times(u).plus(along.times(v)).plus(sun.times(w));
    }

    /** Where the light that leaves {@code point} towards {@code out} crosses the disc's plane: along both axes, m. */
    Vec landing(Vec point, Vec out) {
        double t = middle.minus(point).dot(normal) / out.dot(normal);
        Vec q = point.plus(out.times(t)).minus(middle);
        return new Vec(q.dot(first), q.dot(second), 0);
    }

    /** Law of reflection: the direction away from the mirror of light that came from {@code source}. */
    static Vec reflected(Vec source, Vec mirrorNormal) {
        return mirrorNormal.times(2 * source.dot(mirrorNormal)).minus(source);
    }

    private static Vec aboutAxis(Vec v, double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new Vec(c * v.x() + s * v.y(), c * v.y() - s * v.x(), v.z());
    }

    /** The place on the sky {@code up} and {@code side} away from the axis, along one great circle. */
    private static Vec onSky(double up, double side) {
        double angle = Math.hypot(up, side);
        double k = angle == 0 ? 1 : Math.sin(angle) / angle;
        return new Vec(k * up, k * side, Math.cos(angle));
    }

    /** Undoes the shortest rotation that takes +z to {@link #onSky}(up, side); Rodrigues' formula. */
    private static Vec turnedBack(Vec v, double up, double side) {
        double angle = Math.hypot(up, side);
        if (angle == 0) {
            return v;
        }
        Vec hinge = new Vec(-side / angle, up / angle, 0);
        double c = Math.cos(angle);
        double s = -Math.sin(angle);
        return v.times(c).plus(hinge.cross(v).times(s)).plus(hinge.times(hinge.dot(v) * (1 - c)));
    }
}

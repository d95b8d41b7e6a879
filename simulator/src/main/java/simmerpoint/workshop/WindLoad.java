package simmerpoint.workshop;

import simmerpoint.heat.PhysicalConstants;

/**
 * Wind straight into the open side of a dish on its stand, the worst case.
 *
 * @param area of the dish's outline, m²
 * @param height of its centre above the ground, m
 * @param mass of dish and stand, kg
 * @param arm least distance from the middle of the stand to a line between two neighbouring feet, m
 */
public record WindLoad(double area, double height, double mass, double arm) {
    /**
     * Drag coefficient of a cup with its hollow towards the wind (S. F. Hoerner, Fluid-Dynamic Drag, 1965, from memory); a shallow
     * dish has 1.2 to 1.5.
     */
    public static final double DRAG = 1.42;

    /** Air at sea level and 15 °C, kg/m³ (ISO 2533). */
    private static final double AIR_DENSITY = 1.225;

    /** A stand with {@code feet} on a circle of that radius, m. */
    public static WindLoad of(double area, double height, double mass, int feet, double footRadius) {
        return new WindLoad(area, height, mass, footRadius * Math.cos(Math.PI / feet));
    }

    /** Force of a wind of that speed (m/s), N: ½ρv² · drag coefficient · area. */
    public double force(double speed) {
        return pressure(speed) * DRAG * area;
    }

    /** Dynamic pressure of a wind of that speed (m/s), Pa. */
    static double pressure(double speed) {
        return AIR_DENSITY * speed * speed / 2;
    }

    /** Moment about the ground, N·m. */
    public double moment(double speed) {
        return force(speed) * height;
    }

    /** Speed at which it tips about two feet, m/s: force · height = weight · arm. */
    public double tippingSpeed() {
        return Math.sqrt(mass * PhysicalConstants.GRAVITY * arm / (force(1) * height));
    }

    /** Mass that stands a wind of that speed (m/s), kg. */
    public double massFor(double speed) {
        return moment(speed) / (PhysicalConstants.GRAVITY * arm);
    }
}

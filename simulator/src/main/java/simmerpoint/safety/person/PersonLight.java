package simmerpoint.safety.person;

import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.Yard;
import simmerpoint.safety.field.YardLight;
import simmerpoint.scenario.Scenario;

/**
 * The strongest light on a grown-up who stands in the upright plane through the dish's axis, as deep as wide. Light goes on through the
 * body, which is on the safe side: clothes and skin at the back count too.
 *
 * @param towardsSun where the person's middle stands, level from under the mount, m
 * @param gap level distance from the focus to the near side of the outline, m; 0 if it reaches over the focus
 * @param place where the light is strongest, in the yard
 * @param light there
 */
public record PersonLight(double towardsSun, double gap, Vec place, YardLight.Irradiance light) {
    private static final double STEP = 0.03;

    /** Of a person whose middle stands so far towards the sun. */
    public static PersonLight of(YardLight light, double towardsSun) {
        YardLight.Probe probe = light.new Probe();
        Vec best = new Vec(towardsSun, 0, PersonShape.HEAD_HEIGHT);
        YardLight.Irradiance most = probe.at(best);
        for (double z = STEP / 2; z < PersonShape.HEIGHT; z += STEP) {
            double half = PersonShape.halfWidth(z);
            int n = (int) Math.ceil(half / STEP);
            for (int i = -n; i <= n; i++) {
                for (int j = -n; j <= n; j++) {
                    Vec place = new Vec(towardsSun + half * i / n, half * j / n, z);
                    YardLight.Irradiance here =
                            probe.ifAtLeast(most.together(), place).orElse(most);
                    if (here.together() > most.together()) {
                        most = here;
                        best = place;
                    }
                }
            }
        }
        return new PersonLight(towardsSun, gap(light.scenario(), towardsSun), best, most);
    }

    private static double gap(Scenario scenario, double towardsSun) {
        return Math.max(0, Math.abs(towardsSun - focus(scenario)) - PersonShape.HALF_WIDTH);
    }

    /** Where a person stands whose near side is so far from the focus, on the sun's side. */
    public static double standing(Scenario scenario, double gap) {
        return focus(scenario) + gap + PersonShape.HALF_WIDTH;
    }

    /** Whether the person stands on the sun's side of the focus. */
    public boolean isTowardsSun(Scenario scenario) {
        return towardsSun > focus(scenario);
    }

    private static double focus(Scenario scenario) {
        return Yard.of(scenario)
                .place(new Vec(0, 0, scenario.dish().focalLengthMetres()))
                .x();
    }
}

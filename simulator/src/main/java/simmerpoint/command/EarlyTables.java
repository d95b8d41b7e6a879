package simmerpoint.command;

import simmerpoint.heat.PanLight;
import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.uncertainty.Distributions;

/** Tables that nearly every answer needs, laid out by a second processor while the first one reads the scenario. */
final class EarlyTables {
    private static final Class<?>[] OWNERS = {
        Keys.class, Distributions.class, ScenarioDoubts.class, FastSignedRayleigh.class, PanLight.class
    };

    private EarlyTables() {}

    /** Begins and returns at once; whoever needs a table before it is there waits for it. */
    static void begin() {
        if (Runtime.getRuntime().availableProcessors() > 1) {
            Thread thread = new Thread(EarlyTables::layOut, "early-tables");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private static void layOut() {
        for (Class<?> owner : OWNERS) {
            try {
                Class.forName(owner.getName());
            } catch (ClassNotFoundException | LinkageError e) {
                // Whoever needs the table meets the same fault and says so.
                return;
            }
        }
    }
}

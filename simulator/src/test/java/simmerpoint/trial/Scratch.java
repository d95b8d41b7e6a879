package simmerpoint.trial;

import java.nio.file.*;
import java.util.*;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.*;
import simmerpoint.trial.fit.*;
import simmerpoint.trial.log.*;

public class Scratch {
    public static void main(String[] a) throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("scenarios/garden-strips.yaml"));
        String[][] truths = {
            {},
            {"mirror.slope-error", "22 mrad"},
            {"aim.turn.up", "2°", "aim.turn.side", "2.5°"},
            {"mirror.reflectance", "0.6"},
            {"stand.pull-back", "14 cm"},
            {"pan.lid", "off"},
            {"air.wind", "4 m/s"},
            {"mirror.panel-tilt", "25 mrad"},
        };
        for (String[] t : truths) {
            for (int many = 0; many < 2; many++) {
                CheckedScenario truth = SimulatedLog.with(read, t);
                if (t.length > 0 && t[0].equals("air.wind")) {}
                List<TrialLog> logs = new ArrayList<>();
                double[] moves = many == 0 ? new double[] {0} : new double[] {0, 0.06, -0.05};
                double base = truth.values().number("stand.pull-back");
                SimulatedLog first = null;
                for (double m : moves) {
                    CheckedScenario there = SimulatedLog.with(truth, "stand.pull-back", (base + m) + " m");
                    SimulatedLog log = SimulatedLog.of(there.scenario(), 5).minutes(50);
                    if (first == null) first = log;
                    if (t.length > 0 && t[0].equals("air.wind")) {}
                    Path f = Files.writeString(Path.of("/tmp/fifteen/s.csv"), log.csv("stand.pull-back: " + m + " m"));
                    logs.add(LogReader.read(f));
                }
                long t0 = System.nanoTime();
                TrialResult r = TrialStudy.run(read, logs, TraceOptions.defaults(), Progress.NONE);
                TrialFit f = r.fit().get();
                System.out.printf(
                        "%n%s logs %d true %.0f W  fitted %.0f ± %.0f expected %.0f..%.0f..%.0f  scatter %.2f rms %.2f none %.3f  %.2f s%n",
                        String.join(" ", t),
                        logs.size(),
                        first.watts(),
                        f.watts(),
                        f.error(),
                        f.expected().low(),
                        f.expected().likely(),
                        f.expected().high(),
                        f.scatter(),
                        f.curves().get(0).scatter(),
                        f.noFlaw(),
                        (System.nanoTime() - t0) * 1e-9);
                r.line()
                        .ifPresent(l -> System.out.printf(
                                "   standard %.0f ± %.0f  R2 %.3f basis %s n %d%n",
                                l.standardPowerWatts(),
                                l.halfWidthWatts(.95),
                                l.determination(),
                                r.power().get().basis(),
                                l.fit().points()));
                r.protocol()
                        .ifPresent(p -> System.out.printf(
                                "   loss %.2f (%.2f..%.2f) optical %s%n",
                                p.lossWattsPerKelvin(),
                                p.low(),
                                p.high(),
                                p.factors().map(x -> x.opticalFactor())));
                for (FlawLikelihood x : f.flaws())
                    System.out.printf("   %s %.3f %s %.4f%n", x.flaw(), x.probability(), x.way(), x.size());
                f.pairs().stream()
                        .limit(2)
                        .forEach(
                                p -> System.out.printf("   pair %s %s %.3f%n", p.first(), p.second(), p.probability()));
                System.out.println("   next " + f.next());
            }
        }
    }
}

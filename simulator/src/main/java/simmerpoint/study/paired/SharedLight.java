package simmerpoint.study.paired;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import simmerpoint.geometry.Pose;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.study.light.LightKey;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.ReplicateCatchers;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.study.trace.UsefulPower;
import simmerpoint.target.TallyStatistics;
import simmerpoint.target.TargetScene;
import simmerpoint.tracing.LightBatch;

/** Scenarios with one {@link LightKey}: their light is cast once, for the first, and seen by all the others. */
final class SharedLight {
    private final TraceOptions options;
    private final int bits;
    private final ReplicateCaster casting;
    private final List<Member> members = new ArrayList<>();
    private double seconds;

    SharedLight(List<Scenario> scenarios, TraceOptions options, boolean maps, int bits) {
        this.options = options;
        this.bits = bits;
        casting = new ReplicateCaster(scenarios.get(0), options);
        scenarios.forEach(scenario -> members.add(new Member(scenario, maps)));
    }

    /** Casts all rays on the caller's thread. */
    void cast(ReplicateWorkers.Watch watch) {
        long start = System.nanoTime();
        casting.castOnThisThread(bits, watch, this::take);
        seconds = (System.nanoTime() - start) * 1e-9 / members.size();
    }

    private void take(int r, LightBatch light) {
        for (Member member : members) {
            member.take(r, light);
        }
    }

    /** Casts all rays; the work goes from share {@code from} to {@code to} of all work. */
    void cast(ReplicateWorkers workers, double from, double to) {
        long start = System.nanoTime();
        casting.castBlock(workers, bits, 0, from, to, this::take);
        seconds = (System.nanoTime() - start) * 1e-9 / members.size();
    }

    PairedWatts watts(int member) {
        Member m = members.get(member);
        return m.watts(m.figures());
    }

    PairedTrace trace(int member) {
        Member m = members.get(member);
        TallyStatistics figures = m.figures();
        TraceResult trace = TraceStudy.result(casting, m.scenario, options, figures, true, seconds);
        return new PairedTrace(trace, m.watts(figures));
    }

    /** One scenario's target in the shared light. */
    private final class Member {
        private final Scenario scenario;
        private final ReplicateCatchers catchers;
        private final Map<LightBatch, LightBatch.FrameTransform> views = new ConcurrentHashMap<>();
        private final Pose fromFirst;
        private final boolean sameFrame;

        Member(Scenario scenario, boolean maps) {
            this.scenario = scenario;
            Setup setup = scenario.setup();
            if (!members.isEmpty()) {
                ReplicateCaster.refuseInMirror(casting.surface(), setup, scenario.target());
            }
            sameFrame = members.isEmpty() || setup.equals(casting.setup());
            fromFirst = casting.setup().dishInTarget().inverse().in(setup.dishInTarget());
            TargetScene plan = maps
                    ? new TargetScene(
                            scenario.target(), setup, scenario.sun(), scenario.built(), options.peakDiscRadius())
                    : TargetScene.forWatts(scenario.target(), setup, scenario.sun(), scenario.built());
            catchers = new ReplicateCatchers(plan, casting.caster(), ReplicateCaster.batchSize(bits));
        }

        void take(int r, LightBatch light) {
            catchers.catchLight(r, sameFrame ? light : seen(light));
        }

        /** Each thread's beam fills one and the same batch again and again. */
        private LightBatch seen(LightBatch light) {
            return views.computeIfAbsent(light, batch -> batch.new FrameTransform())
                    .apply(fromFirst);
        }

        TallyStatistics figures() {
            return catchers.statistics();
        }

        PairedWatts watts(TallyStatistics figures) {
            UsefulPower power = new UsefulPower(scenario);
            double[] useful = power.byReplicate(figures);
            Optional<HeatResult> heat = HeatResult.of(scenario, figures.caughtByFace(), UsefulPower.mean(useful));
            return new PairedWatts(
                    scenario,
                    casting.surface().outlineArea(),
                    casting.surface().apertureArea(),
                    casting.surface().panels(),
                    TraceStudy.ledger(figures, heat),
                    heat,
                    figures.caughtByReplicate(),
                    useful);
        }
    }
}

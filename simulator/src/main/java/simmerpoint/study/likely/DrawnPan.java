package simmerpoint.study.likely;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.doubts.DrawnCooker;
import simmerpoint.study.trace.TraceOptions;

/**
 * The pan of one drawn cooker, and how much more its faces take up than those of the cooker as given, per watt of beam, under a few
 * suns: underside, wet wall, dry wall and lid.
 */
record DrawnPan(DrawnHeat heat, List<double[]> more) {
    static DrawnPan of(DrawnCooker cooker, List<TracedMoment> suns, TraceOptions options) {
        List<double[]> more = new ArrayList<>();
        for (TracedMoment sun : suns) {
            double[] given = faces(sun.absorbed());
            double[] drawn = faces(FewRayTrace.absorbed(cooker.at(sun.moment()), options));
            for (int f = 0; f < drawn.length; f++) {
                drawn[f] = (drawn[f] - given[f]) / sun.beamWattsPerSquareMetre();
            }
            more.add(drawn);
        }
        return new DrawnPan(DrawnHeat.of(cooker), more);
    }

    /** What it does in the light of {@code now}, {@code share} of the way from sun {@code below} to the next. */
    DrawnOutcome at(TracedMoment now, int below, double share) {
        return heat.in(light(now, below, share));
    }

    /** Its cooking power then, W. */
    double powerAt(TracedMoment now, int below, double share) {
        return heat.power(light(now, below, share));
    }

    /** Watts beyond what a simmer takes then. */
    double simmerSpareAt(TracedMoment now, int below, double share) {
        return heat.spare(HeatLevel.SIMMER, light(now, below, share));
    }

    private AbsorbedLight light(TracedMoment now, int below, double share) {
        double[] faces = faces(now.absorbed());
        int above = Math.min(below + 1, more.size() - 1);
        for (int f = 0; f < faces.length; f++) {
            double difference = more.get(below)[f] + share * (more.get(above)[f] - more.get(below)[f]);
            faces[f] = Math.max(0, faces[f] + now.beamWattsPerSquareMetre() * difference);
        }
        return new AbsorbedLight(faces[0], faces[1], faces[2], faces[3]);
    }

    private static double[] faces(AbsorbedLight light) {
        return new double[] {light.undersideWatts(), light.wetWallWatts(), light.dryWallWatts(), light.lidWatts()};
    }
}

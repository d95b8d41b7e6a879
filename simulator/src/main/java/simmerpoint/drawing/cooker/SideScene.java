package simmerpoint.drawing.cooker;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.drawing.Style;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.SideView.Place;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.light.RayPath;

/**
 * Everything the side view shows, in places of the yard (see {@link YardPlace}).
 *
 * @param scenario what it is
 * @param geometry its heights
 * @param panels the nearer half of the mirror, the farther panels first
 * @param profile section of the ribs that point up and down, lower rim first; empty for a mesh
 * @param vertex the dish's vertex
 * @param middle the dish's middle: the vertex, unless it lies beside its axis
 * @param focus where the dish's own focus is
 * @param mount what the dish turns about
 * @param legs level distance of the tripod's feet from its middle, m
 * @param pan middle of the pan's underside, or of the disc
 * @param disc edge of a bare disc; empty for a pan
 * @param bars ends of the bars that the pan stands on
 * @param upperRim the dish's upper edge
 * @param lowest the mirror's lowest point
 * @param sun where the sun is drawn
 * @param rays a few rays
 * @param panTrouble what is impossible about the pan, in words
 * @param dishTrouble what is impossible about the dish, in words
 * @param lit ends of the light that is laid under it and of whoever stands in it; empty without light
 */
public record SideScene(
        Scenario scenario,
        StandGeometry geometry,
        List<Panel> panels,
        List<Place> profile,
        Place vertex,
        Place middle,
        Place focus,
        Place mount,
        double legs,
        Place pan,
        List<Place> disc,
        List<List<Place>> bars,
        Place upperRim,
        Place lowest,
        Place sun,
        List<Ray> rays,
        Optional<String> panTrouble,
        Optional<String> dishTrouble,
        List<Place> lit) {
    /**
     * One panel.
     *
     * @param edge its corners
     * @param hole corners of a hole in it; empty for none
     * @param shade its shade by how it leans
     */
    public record Panel(List<Place> edge, List<Place> hole, Style shade) {}

    /**
     * One ray.
     *
     * @param from where it comes into the picture
     * @param mirror where it meets the mirror; for a ray that the pan stops, where it is stopped
     * @param end where it ends
     * @param fate what becomes of it
     */
    public record Ray(Place from, Place mirror, Place end, RayPath.Fate fate) {}

    /** The same with light laid under it; no rays are drawn over it. */
    public SideScene lit(List<Place> ends) {
        return new SideScene(
                scenario,
                geometry,
                panels,
                profile,
                vertex,
                middle,
                focus,
                mount,
                legs,
                pan,
                disc,
                bars,
                upperRim,
                lowest,
                sun,
                List.of(),
                panTrouble,
                dishTrouble,
                List.copyOf(ends));
    }

    /** Whether the dish lies beside its axis. */
    boolean besideAxis() {
        return scenario.dish().aperture().isBesideAxis();
    }

    /** What is wrong, in words. */
    Optional<String> trouble() {
        return Stream.of(panTrouble, dishTrouble).flatMap(Optional::stream).reduce((pan, dish) -> pan + " " + dish);
    }

    /** "pan" or "disc". */
    public String noun() {
        return TargetWords.of(scenario.target()).noun();
    }
}

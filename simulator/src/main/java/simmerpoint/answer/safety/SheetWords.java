package simmerpoint.answer.safety;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.pan.Pan;
import simmerpoint.quantities.OneLine;
import simmerpoint.safety.CookerLight;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.safety.risk.SkinTimes;
import simmerpoint.units.UnitSystem;

/**
 * What the sheet that stays with the cooker says, so that a class of children understands it; lengths in centimetres and inches.
 *
 * @param light its light
 * @param system of the lengths that come first
 */
public record SheetWords(CookerLight light, UnitSystem system) {
    /** Heading of the sheet. */
    public String title() {
        String title = OneLine.of(light.scenario().title());
        return title.isEmpty() ? "This mirror burns" : "This mirror burns: " + title;
    }

    /** What it is about. */
    public String why() {
        return "The mirror brings the sun together in one place, the focus, where the pan stands. The light there is up to "
                + FigureFormat.fixed(Math.max(1, light.cautionFlux() / 1000), 0)
                + " times as strong as the strongest sunshine. You cannot see it in the air.";
    }

    /** How far to stay away, a line each. */
    public List<String> distances() {
        List<String> lines = new ArrayList<>();
        boolean pan = light.scenario().target() instanceof Pan;
        lines.add((pan ? "Everybody but the cook: " : "You: ") + both(light.people())
                + ". Nearer than that your skin gets too hot.");
        if (pan) {
            lines.add("The cook: " + both(light.cook())
                    + " while the pan is in place. Cover the mirror before you come nearer or lift the pan.");
        }
        if (light.things() > 0) {
            lines.add("Paper, leaves, dry grass, cloth, wood, plastic: " + both(light.things())
                    + ". Nearer than that they can smoulder or burn.");
        }
        light.taken()
                .farthest(Hazard.CHAR)
                .ifPresent(near -> lines.add("Nearer than " + both(near.value() + 2 * near.standardError())
                        + " dry leaves catch fire within 10 seconds and skin is burnt within "
                        + FigureFormat.fixed(
                                SkinTimes.soonestBurn(Hazard.CHAR.wattsPerSquareMetre())
                                        .orElseThrow(),
                                0)
                        + "."));
        lines.add("Never reach between the mirror and the pan, not even with a tool.");
        return lines;
    }

    private String both(double metres) {
        UnitSystem other = system == UnitSystem.METRIC ? UnitSystem.INCH : UnitSystem.METRIC;
        return ReachWords.away(metres, system) + " (" + ReachWords.away(metres, other) + ")";
    }

    /** What to do. */
    public List<String> rules() {
        return List.of(
                "1. Never look at the bright spot or into the mirror. It does not hurt, and it can damage your eyes for good.",
                "2. Cover the mirror first. Then put the pan on, move it, or take it off. Then uncover, from the side.",
                "3. A grown-up, the cook, stays with it. Children and animals stay behind the line drawn on the ground.",
                "4. Nobody in the beam? Nothing that burns behind the pan? Then uncover.",
                "5. Finished: cover it, or lay it face down. A mirror left alone sets things on fire as the sun moves on.",
                "6. Water and a lid or sand stand ready. Is there a fire ban, or much wind? Then it stays covered.",
                "7. Skin burnt: cool it under running water for 20 minutes, and call for help. Sight blurred: see a doctor today.");
    }

    /** What it is not. */
    public String estimate() {
        return "An estimate by Simmerpoint for this mirror in sun of "
                + FigureFormat.rounded(light.scenario().sun().beamWattsPerSquareMetre(), 3)
                + "\u00a0W/m\u00b2, not a clearance. Local codes, fire rules and licensed practice come first.";
    }
}

package simmerpoint.answer.scenario;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.sun.Sunlight;
import simmerpoint.units.UnitSystem;

/** What a scenario says, in a few lines: to see at a glance whether the file was understood as meant. */
public final class ScenarioAnswer {
    private final Scenario scenario;
    private final List<String> defaults;
    private final FigureFormat figures;

    private ScenarioAnswer(Scenario scenario, List<String> defaults, FigureFormat figures) {
        this.scenario = scenario;
        this.defaults = defaults;
        this.figures = figures;
    }

    /** The answer for {@code scenario}, in the units of {@code system}. */
    public static Answer of(Scenario scenario, UnitSystem system) {
        return of(scenario, List.of(), system);
    }

    /** The answer for what was read from a file, with the sections that the file leaves out. */
    public static Answer of(CheckedScenario read, UnitSystem system) {
        return of(read.scenario(), read.defaults(), system);
    }

    private static Answer of(Scenario scenario, List<String> defaults, UnitSystem system) {
        ScenarioAnswer answer = new ScenarioAnswer(scenario, defaults, new FigureFormat(system));
        return new Answer(OneLine.of(scenario.title()), List.of(new Section("What the scenario says", answer.items())));
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>(List.of(
                new Item.Figure("dish", dish()),
                new Item.Figure("cut", new CutWords(scenario, figures).cut()),
                new Item.Figure("mirror", mirror()),
                new Item.Figure("sun", sun())));
        if (!scenario.workmanship().parts().isEmpty()) {
            items.add(3, new Item.Figure("workmanship", new WorkmanshipWords(scenario, figures).sentence()));
        }
        scenario.site().ifPresent(outdoors -> items.addAll(OutdoorWords.items(outdoors, figures)));
        AimWords aim = new AimWords(scenario.aim(), scenario.stand(), TargetWords.of(scenario.target()), figures);
        items.add(new Item.Figure("aim", aim.aiming()));
        items.add(new Item.Figure("target", target()));
        items.add(new Item.Figure("where it stands", aim.place()));
        scenario.cooking()
                .ifPresent(kitchen ->
                        items.addAll(new KitchenWords(kitchen, figures.system()).items(scenario.heights(), figures)));
        if (!defaults.isEmpty()) {
            items.add(new Item.Figure("not in the file", String.join(", ", defaults) + ": defaults taken"));
        }
        return items;
    }

    private String dish() {
        DishPlan dish = scenario.dish();
        double depth = dish.radiusMetres() * dish.radiusMetres() / (4 * dish.focalLengthMetres());
        return figures.length(dish.diameterMetres()) + " across, focal length "
                + figures.length(dish.focalLengthMetres()) + ", " + figures.length(depth) + " deep, hub "
                + figures.length(dish.hubMetres()) + ", gaps " + figures.length(dish.gapMetres());
    }

    private String mirror() {
        Mirror mirror = scenario.mirror();
        return OneLine.of(mirror.material()) + ": reflects " + figures.percent(mirror.reflectance())
                + ", scatters " + figures.percent(mirror.scattered()) + " of that, dust takes "
                + figures.percent(mirror.dust()) + "; slope error " + milliradians(mirror.slopeErrorRadians())
                + ", panel tilt " + milliradians(mirror.panelTiltRadians()) + ", beam spread "
                + milliradians(mirror.beamSpreadRadians()) + wide(mirror);
    }

    private String wide(Mirror mirror) {
        return mirror.wideShare() > 0
                ? ", but " + figures.percent(mirror.wideShare()) + " of the beam spread by "
                        + milliradians(mirror.wideSpreadRadians())
                : "";
    }

    /** An angle to two digits that count, mrad. */
    public static String milliradians(double radians) {
        return (radians == 0 ? "0" : FigureFormat.rounded(radians * 1000, 2)) + FigureFormat.NBSP + "mrad";
    }

    private String sun() {
        Sunlight sun = scenario.sun();
        return figures.degrees(sun.elevationRadians()) + " high, beam "
                + FigureFormat.rounded(sun.beamWattsPerSquareMetre(), 3) + FigureFormat.NBSP + "W/m\u00b2, "
                + OneLine.of(sun.shape().describe());
    }

    private String target() {
        if (scenario.target() instanceof Pan pan) {
            return "pan " + figures.length(pan.diameterMetres()) + " across, " + figures.length(pan.heightMetres())
                    + " high, " + OneLine.of(pan.finish().name()) + " (takes up "
                    + figures.percent(pan.finish().absorptance()) + ")";
        }
        Plane plane = (Plane) scenario.target();
        return "bare disc " + figures.length(plane.discMetres()) + " across, leaning "
                + figures.degrees(plane.leanRadians());
    }
}

package simmerpoint.answer.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.DishWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.PointsWords;
import simmerpoint.answer.words.ShellWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.Zone;
import simmerpoint.dish.built.BuildErrors;
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
        return new Answer(
                OneLine.of(scenario.title()),
                List.of(new ScenarioAnswer(scenario, defaults, new FigureFormat(system)).section()));
    }

    /** The same in a dozen lines. */
    public static Answer brief(CheckedScenario read, UnitSystem system) {
        ScenarioAnswer answer = new ScenarioAnswer(read.scenario(), read.defaults(), new FigureFormat(system));
        return ShortAnswer.of(read.scenario().title(), answer.inBrief(), NextCommand.line(NextCommand.TRACE));
    }

    private SectionBuilder inBrief() {
        AimWords aim = new AimWords(scenario.aim(), scenario.stand(), TargetWords.of(scenario.target()), figures);
        SectionBuilder out = Section.headed("What the scenario says")
                .figure("dish", size())
                .figure("cut", cut())
                .figure(
                        "focus",
                        ShellWords.of(scenario, figures).map(words -> words.strings() + "; " + words.tapeDoubt()))
                .figure("points", PointsWords.of(scenario, figures).map(PointsWords::brief))
                .figure("mirror", reflects())
                .figure("shape", shape())
                .figure("sun", sunInShort())
                .figure("aim", aim.aiming())
                .figure("target", target() + ", " + aim.place());
        scenario.cooking().ifPresent(kitchen -> new KitchenWords(kitchen, figures.system()).addShort(out));
        return out;
    }

    private Section section() {
        AimWords aim = new AimWords(scenario.aim(), scenario.stand(), TargetWords.of(scenario.target()), figures);
        SectionBuilder out = Section.headed("What the scenario says")
                .figure("dish", dish())
                .figure("cut", cut())
                .figure("shell", ShellWords.of(scenario, figures).map(ShellWords::focus))
                .figure("points", PointsWords.of(scenario, figures).map(PointsWords::full))
                .figure("mirror", mirror())
                .figure("workmanship", workmanship())
                .figure("shape", shape())
                .figure("sun", sun());
        scenario.site().ifPresent(outdoors -> OutdoorWords.addTo(out, outdoors, figures));
        out.figure("aim", aim.aiming()).figure("target", target()).figure("where it stands", aim.place());
        support().ifPresent(words -> out.figure("stands on", words));
        scenario.cooking()
                .ifPresent(
                        kitchen -> new KitchenWords(kitchen, figures.system()).addTo(out, scenario.heights(), figures));
        if (!defaults.isEmpty()) {
            out.figure("not in the file", String.join(", ", defaults) + ": defaults taken");
        }
        return out.build();
    }

    /** "3 bars 8 mm × 30 cm, 1 bar 25 mm × 60 cm, ring 20 cm wide". */
    private Optional<String> support() {
        if (!(scenario.target() instanceof Pan pan && pan.support().any())) {
            return Optional.empty();
        }
        List<String> parts = new ArrayList<>();
        pan.support().bars().stream()
                .collect(Collectors.groupingBy(
                        bar -> figures.length(bar.widthMetres()) + " \u00d7 " + figures.length(bar.lengthMetres()),
                        LinkedHashMap::new,
                        Collectors.counting()))
                .forEach((size, count) -> parts.add(count + (count == 1 ? " bar " : " bars ") + size));
        if (pan.support().ringWidthMetres() > 0) {
            parts.add("ring " + figures.length(2 * pan.support().ringRadiusMetres()) + " wide");
        }
        return Optional.of(String.join(", ", parts));
    }

    private String dish() {
        DishPlan dish = scenario.dish();
        String holes = dish.cut().ownSize().isPresent()
                ? ""
                : ", hub " + figures.length(dish.hubMetres()) + ", gaps " + figures.length(dish.gapMetres());
        return size()
                + holes
                + (scenario.mask().isThere() ? "; covered: " + DishWords.masked(scenario.mask(), figures) : "");
    }

    private String size() {
        DishPlan dish = scenario.dish();
        if (dish.cut().ownSize().isPresent()) {
            return figures.length(dish.diameterMetres()) + " across as the sun sees it, focal length "
                    + figures.length(dish.focalLengthMetres());
        }
        double depth = dish.profile().height(dish.radiusMetres());
        return figures.length(dish.diameterMetres()) + " across, focal length "
                + figures.length(dish.focalLengthMetres()) + ", " + figures.length(depth) + " deep";
    }

    /** How the dish is cut, with the number and size of its panels and how much of the outline they cover. */
    private String cut() {
        DishPlan dish = scenario.dish();
        MirrorSurface surface = dish.surface(scenario.setup().sunInDish());
        double share = surface.apertureArea() / surface.outlineArea();
        String panels = dish.cut().description(dish, FigureFormat.count(surface.panels()), figures::length);
        return OneLine.of(panels) + (dish.cut().has(CutTrait.PANELS) ? "; they cover " : "; its mirror covers ")
                + figures.percent(Math.min(1, share)) + " of the outline";
    }

    /** What a maker's tolerances come to; empty if there are none. */
    private Optional<String> workmanship() {
        if (scenario.workmanship().parts().isEmpty()) {
            return Optional.empty();
        }
        BuildErrors.Part all = scenario.workmanship().all();
        return Optional.of("tolerances come to slope errors of " + FigureFormat.milliradians(all.slopeAlong())
                + " along the ribs and "
                + FigureFormat.milliradians(all.slopeAcross()) + " across, panels tilted by "
                + FigureFormat.milliradians(all.tiltAlong()) + " along and "
                + FigureFormat.milliradians(all.tiltAcross()) + " across" + slits(all)
                + "; with the mirror's own: slope error "
                + FigureFormat.milliradians(scenario.built().mirror().slopeErrorRadians()) + ", panel tilt "
                + FigureFormat.milliradians(scenario.built().mirror().panelTiltRadians()));
    }

    /** How the whole dish differs from its plan; empty if it does not. */
    private Optional<String> shape() {
        return scenario.shape().any()
                ? Optional.of(scenario.shape().metres().entrySet().stream()
                        .map(entry -> entry.getKey().words() + " " + figures.length(entry.getValue(), 2)
                                + (entry.getKey().byWeight() ? " with the dish on its back" : ""))
                        .collect(Collectors.joining(", ")))
                : Optional.empty();
    }

    private String slits(BuildErrors.Part all) {
        return all.gap() > 0 ? ", slits of " + figures.length(all.gap(), 2) : "";
    }

    private String mirror() {
        return ofMirrors(mirror -> reflects(mirror) + ", scatters " + figures.percent(mirror.scattered())
                + " of that, dust takes " + figures.percent(mirror.dust()) + "; slope error "
                + FigureFormat.milliradians(mirror.slopeErrorRadians())
                + ", panel tilt " + FigureFormat.milliradians(mirror.panelTiltRadians()) + ", beam spread "
                + FigureFormat.milliradians(mirror.beamSpreadRadians()) + wide(mirror));
    }

    private String reflects() {
        return ofMirrors(this::reflects);
    }

    /** Said of the mirror; of each zone's where they differ. */
    private String ofMirrors(Function<Mirror, String> words) {
        List<Mirror> mirrors = scenario.mirrors();
        if (mirrors.stream().map(words).distinct().count() == 1) {
            return words.apply(mirrors.get(0));
        }
        List<Zone> zones = scenario.dish().cut().zones();
        return IntStream.range(0, zones.size())
                .mapToObj(k -> zones.get(k).name() + ": " + words.apply(mirrors.get(k)))
                .collect(Collectors.joining("; "));
    }

    private String reflects(Mirror mirror) {
        return OneLine.of(mirror.material()) + ": reflects " + figures.percent(mirror.reflectance());
    }

    private String wide(Mirror mirror) {
        return mirror.wideShare() > 0
                ? ", but " + figures.percent(mirror.wideShare()) + " of the beam spread by "
                        + FigureFormat.milliradians(mirror.wideSpreadRadians())
                : "";
    }

    private String sun() {
        Sunlight sun = scenario.sun();
        return sunInShort() + ", " + OneLine.of(sun.shape().describe());
    }

    private String sunInShort() {
        Sunlight sun = scenario.sun();
        return figures.degrees(sun.elevationRadians()) + " high, beam "
                + FigureFormat.rounded(sun.beamWattsPerSquareMetre(), 3) + FigureFormat.NBSP + "W/m\u00b2";
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

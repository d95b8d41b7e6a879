package simmerpoint.answer.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShapeToleranceWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Flaw;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Significance;
import simmerpoint.units.UnitSystem;

/** The answer to "what do I lose by building it roughly, and what is worth mending?". */
public final class BudgetAnswer {
    /** A flaw whose mending costs more than this share of a perfect cooker is told. */
    private static final double WORTH_A_WORD = 0.01;

    private static final int MOST_FLAWS = 4;
    private static final String PLACE = "pan-place";

    private final BudgetResult result;
    private final FigureFormat figures;
    private final FlawWords flaws;
    private final TargetWords words;

    private BudgetAnswer(BudgetResult result, FigureFormat figures) {
        this.result = result;
        this.figures = figures;
        flaws = new FlawWords(result.scenario(), figures);
        words = TargetWords.of(result.scenario().target());
    }

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(BudgetResult result, UnitSystem system) {
        BudgetAnswer answer = new BudgetAnswer(result, new FigureFormat(system));
        return new Answer(
                OneLine.of(result.scenario().title()),
                Stream.of(
                                Stream.of(answer.costs(), answer.steps()),
                                answer.tolerances().stream(),
                                result.likely().map(l -> LikelyWords.section(l, system)).stream(),
                                Stream.of(care(), answer.sure()))
                        .flatMap(part -> part)
                        .toList());
    }

    private Optional<Section> tolerances() {
        return result.tolerances().isEmpty()
                ? Optional.empty()
                : Optional.of(toleranceWords().section(result.tolerances()));
    }

    /** How true it must be: that holds where the pan stands, so its place comes first. */
    private Optional<String> trueness() {
        return Optional.of(result.tolerances())
                .filter(found -> !found.isEmpty())
                .map(found -> toleranceWords().sentence(found));
    }

    private ShapeToleranceWords toleranceWords() {
        return new ShapeToleranceWords(result.scenario().dish(), figures);
    }

    private static Section care() {
        return Section.headed(Cautions.HEADING)
                .add(new Item.Caution(Cautions.ALWAYS, true))
                .build();
    }

    /** The same in a dozen lines. */
    public static Answer brief(BudgetResult result, UnitSystem system) {
        BudgetAnswer answer = new BudgetAnswer(result, new FigureFormat(system));
        SectionBuilder out = Section.headed("What the flaws cost").say(answer.first());
        if (!result.costs().isEmpty()) {
            out.add(answer.dearest());
        }
        out.say(answer.placeFirst().or(answer::trueness));
        return ShortAnswer.of(
                result.scenario().title(),
                out.addAll(care().items()),
                NextCommand.line(NextCommand.COMPARE, NextCommand.DESIGN, NextCommand.CUT));
    }

    /** The flaws whose mending brings most, in whole watts. */
    private Item dearest() {
        return Columns.<FlawCost>none()
                .with("flaw", cost -> flaws.sized(cost.flaw()))
                .with("mended alone\nit brings", cost -> figures.wholeWatts(cost.offInTurn()))
                .with("share", cost -> share(cost.offInTurn()))
                .table(result.costs().stream().limit(MOST_FLAWS).toList());
    }

    private Section costs() {
        SectionBuilder out = Section.headed("What the flaws cost").say(first() + meaning());
        if (!result.costs().isEmpty()) {
            out.add(table()).say(explained()).say(placeFirst()).say(together());
        }
        return leftOut(out).build();
    }

    /** The first sentence of the answer, for pictures and pages too. */
    public static String first(BudgetResult result, UnitSystem system) {
        return new BudgetAnswer(result, new FigureFormat(system)).first();
    }

    private String first() {
        String start = "Perfect mirrors in this size would bring " + figures.plainWatts(result.perfect()) + " "
                + (words.isPan() ? "into the water" : "onto the disc") + "; yours bring "
                + figures.plainWatts(result.built())
                + LikelyWords.behind(result.likely());
        if (result.costs().isEmpty()) {
            return start + ": there is no flaw in this scenario that could be mended.";
        }
        FlawCost dearest = result.costs().get(0);
        if (!Significance.of(dearest.offInTurn()) || dearest.offInTurn().value() < 0) {
            return start + "; mending any one flaw alone would bring next to nothing.";
        }
        return start + "; the most costly is " + flaws.told(dearest.flaw()) + " (\u2212"
                + figures.plainWatts(dearest.offInTurn()) + ").";
    }

    private String meaning() {
        String watts = words.isPan()
                ? " Watts are cooking power: net heat into the water, when the pan has lost what it loses."
                : "";
        return watts + " Perfect is without any of the flaws below; the sun\u2019s size and the " + words.noun()
                + (words.isPan() ? " with its finish" : "") + " stay as they are.";
    }

    /** A line of the table: what mending it alone brings, and what it alone costs. */
    private record Line(String name, Estimate inTurn, Estimate alone) {}

    private Item table() {
        List<Line> lines = new ArrayList<>();
        result.costs().forEach(c -> lines.add(new Line(flaws.sized(c.flaw()), c.offInTurn(), c.onAlone())));
        if (result.costs().size() > 1) {
            lines.add(new Line("acting together", result.leftInTurn(), result.leftAlone()));
        }
        lines.add(new Line("all flaws", result.total(), result.total()));
        return Columns.<Line>none()
                .with("flaw", Line::name)
                .with("mended alone\nit brings", line -> watts(line.inTurn()))
                .with("share", line -> share(line.inTurn()))
                .with("there alone\nit costs", line -> watts(line.alone()))
                .with("share", line -> share(line.alone()))
                .table(lines);
    }

    private String watts(Estimate e) {
        return figures.wattsOf(result.perfect().value(), e);
    }

    private String share(Estimate watts) {
        if (Significance.of(watts)) {
            return percent(result.share(watts).value());
        }
        return result.isNothing(watts) ? "none" : "not sure";
    }

    private String percent(double share) {
        String size = figures.percent(Math.abs(share));
        return (share < 0 && !size.startsWith("<") ? "\u2212" : "") + size;
    }

    private String explained() {
        boolean unsure = result.costs().stream().anyMatch(c -> unsure(c.offInTurn()) || unsure(c.onAlone()));
        boolean gain = result.costs().stream().anyMatch(c -> gains(c.offInTurn()) || gains(c.onAlone()));
        return "Left: your cooker with this one flaw mended. Right: a perfect cooker with this one flaw alone. Shares are of "
                + "the perfect cooker\u2019s watts."
                + (unsure
                        ? " Not sure: within " + FigureFormat.fixed(Significance.ERRORS, 0)
                                + " standard errors of nothing; more rays may tell."
                        : "")
                + (gain
                        ? " Below nothing: it brings watts, because it makes up for another flaw, or because the focus is "
                                + "not quite the best place for this " + words.noun() + "."
                        : "")
                + onPurpose();
    }

    /** What to do where mending a flaw would cost watts: it makes up for a pan out of its best place. */
    private Optional<String> placeFirst() {
        return result.costs().stream()
                .filter(cost -> !cost.flaw().key().equals(PLACE)
                        && Significance.of(cost.offInTurn())
                        && result.share(cost.offInTurn()).value() < -WORTH_A_WORD)
                .min(Comparator.comparingDouble(cost -> cost.offInTurn().value()))
                .map(cost -> "Mending " + flaws.told(cost.flaw()) + " alone loses "
                        + figures.wholeWatts(cost.offInTurn().times(-1)) + " while the " + words.noun()
                        + " stands where it does: find its best place first" + (words.isPan() ? " (pan)" : "") + ".");
    }

    /** A pan out of place may be there on purpose. */
    private String onPurpose() {
        return result.costs().stream()
                .filter(cost -> cost.flaw().key().equals(PLACE))
                .findFirst()
                .map(cost -> gains(cost.offInTurn())
                        ? " The " + words.noun() + " does better where it stands than at the focus."
                        : " If the " + words.noun()
                                + " was moved on purpose, for a simmer, its line is the price of that.")
                .orElse("");
    }

    private boolean unsure(Estimate watts) {
        return share(watts).equals("not sure");
    }

    private static boolean gains(Estimate cost) {
        return cost.value() < 0 && Significance.of(cost);
    }

    private String together() {
        List<String> parts = new ArrayList<>();
        left(
                parts,
                result.leftInTurn(),
                "the left column adds up to, which come back only when several are mended",
                "the left column adds up to, since light lost to one flaw is often lost to another too");
        left(
                parts,
                result.leftAlone(),
                "the right column adds up to, since the pan forgives one flaw but not all of them together",
                "the right column adds up to, since light lost to one flaw cannot be lost to another");
        return "All flaws together cost " + watts(result.total())
                + (parts.isEmpty() ? "" : ": " + String.join("; and ", parts)) + ".";
    }

    private void left(List<String> parts, Estimate left, String above, String below) {
        if (result.costs().size() > 1 && Significance.of(left)) {
            parts.add(watts(left.abs()) + (left.value() > 0 ? " more than " + above : " less than " + below));
        }
    }

    private SectionBuilder leftOut(SectionBuilder out) {
        Map<Boolean, List<Flaw>> fixed = result.fixed().stream()
                .collect(Collectors.partitioningBy(f -> f.fixed().test(result.scenario())));
        return out.sayIf(
                        !result.absent().isEmpty(),
                        "Not there, so nothing is lost by it: " + names(result.absent()) + ".")
                .sayIf(
                        !fixed.get(true).isEmpty(),
                        "Part of the mesh file, so they cannot be switched off and the "
                                + "perfect cooker has them too: " + names(fixed.get(true)) + ".")
                .sayIf(
                        !fixed.get(false).isEmpty(),
                        "Left as they are, since without them the " + words.noun() + " would stand in the mirror: "
                                + names(fixed.get(false)) + ".");
    }

    private String names(List<Flaw> list) {
        return String.join(", ", list.stream().map(flaws::name).toList());
    }

    private Section steps() {
        SensitivityWords steps = new SensitivityWords(figures, result);
        return Section.headed("One step more or less")
                .say("How the watts change when one figure goes one step from where it is, all others staying.")
                .addAll(result.sensitivities().stream().map(steps::item).toList())
                .build();
    }

    private Section sure() {
        return Section.headed(Cautions.HOW_SURE)
                .say(
                        "\u00b1 is one standard error from sampling; of a cost it holds the luck of gluing as well, where panels lie"
                                + " askew. Everything is traced with the same rays, so that "
                                + "differences are far surer than the watts themselves. It says nothing of mirrors, wind or sky that "
                                + "differ from the scenario.")
                .say(FigureFormat.count(result.run().traces()) + " traces of "
                        + FigureFormat.count(result.run().raysEach()) + " rays, seed "
                        + result.run().seed() + ".")
                .build();
    }
}

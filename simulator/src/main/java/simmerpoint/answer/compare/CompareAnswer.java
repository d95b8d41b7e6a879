package simmerpoint.answer.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.dish.CutTrait;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.quantities.CompareQuantities;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.VariantNames;
import simmerpoint.scenario.variants.DifferingKey;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.units.UnitSystem;

/** The answer to "which of these is best, and what does the cheaper one cost me?". */
public final class CompareAnswer {
    private static final String QUICK =
            "For the figures exactly as given; what gluing, aim, pan and weather may turn out, best places"
                    + " and aiming are left out by --quick: small differences may be luck.";
    private static final int MOST_NAMES = 3;
    private static final int MOST_KEYS = 12;
    private static final int MOST_VALUES = 6;

    private final Comparison comparison;
    private final VariantNames names;
    private final CompareWords words;
    private final CompareCosts costs;
    private final FigureFormat figures;
    private final HeatWords heat;

    private CompareAnswer(Comparison comparison, UnitSystem system) {
        this.comparison = comparison;
        names = new VariantNames(comparison.variants());
        words = new CompareWords(comparison);
        costs = new CompareCosts(comparison);
        figures = new FigureFormat(system);
        heat = new HeatWords(system);
    }

    /** The answer for {@code comparison}, in the units of {@code system}. */
    public static Answer of(Comparison comparison, UnitSystem system) {
        CompareAnswer answer = new CompareAnswer(comparison, system);
        return new Answer(
                CompareQuantities.title(comparison),
                List.of(answer.which(), answer.beside(), answer.differs(), answer.cautions(), answer.sure()));
    }

    /** The same in a dozen lines. */
    public static Answer brief(Comparison comparison, UnitSystem system) {
        CompareAnswer answer = new CompareAnswer(comparison, system);
        SectionBuilder out = Section.headed(answer.verdict());
        answer.table().addShort(out);
        return ShortAnswer.of(
                CompareQuantities.title(comparison),
                out.say(answer.atBestPlace())
                        .say(answer.costs.cheapest(answer::name))
                        .sayIf(comparison.quick(), QUICK),
                answer.hottest(),
                Cautions.at(answer.words.noun()),
                NextCommand.line(NextCommand.BUDGET, NextCommand.CUT));
    }

    private String verdict() {
        ComparedRow best = comparison.best();
        return best.ledger().caught().value() > 0
                ? "Best: " + name(best) + ", " + figures.plainWatts(best.useful()) + " " + words.where()
                        + LikelyWords.behind(best.likely())
                : "None of them gets any light to its " + words.noun();
    }

    /** The sentence that answers in watts. */
    public static String first(Comparison comparison, UnitSystem system) {
        return new CompareAnswer(comparison, system).best();
    }

    private Section which() {
        return Section.headed("Which is best")
                .say(best())
                .say(atBestPlace())
                .say(fewestPanels())
                .say(costs.cheapest(this::name))
                .say(boiling())
                .sayIf(comparison.quick(), QUICK)
                .build();
    }

    private Section beside() {
        SectionBuilder out = Section.headed("Side by side");
        table().addTo(out);
        return out.say(columns()).build();
    }

    private CompareTable table() {
        return new CompareTable(comparison, names, words, costs, figures.system());
    }

    private String best() {
        ComparedRow best = comparison.best();
        if (!(best.ledger().caught().value() > 0)) {
            return "None of them gets any light to its " + words.noun() + ".";
        }
        List<ComparedRow> worse =
                comparison.rows().stream().filter(ComparedRow::isSeenToDiffer).toList();
        List<String> same = comparison.top().stream()
                .filter(row -> row.place() != best.place())
                .map(this::name)
                .toList();
        String text = "Best is " + name(best) + " with " + figures.plainWatts(best.useful()) + " " + words.where();
        if (!same.isEmpty()) {
            text += "; no difference is seen to " + CompareWords.enumerated(same, MOST_NAMES);
        }
        return text + costs(worse) + ".";
    }

    /** Who is best when no pan stands out of place, so that sloppy work is not crowned for spreading the light to where one stands. */
    private Optional<String> atBestPlace() {
        return comparison
                .bestAtItsPlace()
                .filter(row -> comparison.rows().size() > 1)
                .map(row -> {
                    ComparedRow best = comparison.best();
                    String watts = figures.plainWatts(row.atBest().orElseThrow().watts());
                    if (row.place() == best.place()) {
                        return "With each pan at its best place " + stays(row) + watts + ".";
                    }
                    return "That is with the pans where they stand. With each pan at its best place, " + name(row)
                            + " is best with " + watts + ", and " + name(best) + " has "
                            + figures.plainWatts(best.atBest().orElseThrow().watts()) + ".";
                });
    }

    private String stays(ComparedRow best) {
        return comparison.orderStays()
                ? "the order stays: " + name(best) + " then has "
                : name(best) + " stays best, but the others change places; it then has ";
    }

    private String costs(List<ComparedRow> worse) {
        if (worse.isEmpty()) {
            return "";
        }
        if (worse.size() <= MOST_NAMES) {
            return "; "
                    + String.join(
                            "; ",
                            worse.stream().map(row -> name(row) + cost(row)).toList());
        }
        return "; the next, " + name(worse.get(0)) + "," + cost(worse.get(0)) + "; the last, "
                + name(worse.get(worse.size() - 1)) + "," + cost(worse.get(worse.size() - 1));
    }

    private String cost(ComparedRow row) {
        return " costs " + figures.watts(row.difference().times(-1));
    }

    private String name(ComparedRow row) {
        return names.name(row.variant());
    }

    /** Which of those that are as good as the best is the least work. */
    private Optional<String> fewestPanels() {
        List<ComparedRow> cut = comparison.top().stream()
                .filter(row -> row.variant().scenario().dish().cut().has(CutTrait.PANELS))
                .toList();
        if (cut.size() < 2) {
            return Optional.empty();
        }
        ComparedRow least =
                cut.stream().min(Comparator.comparingInt(ComparedRow::panels)).orElseThrow();
        boolean all = cut.stream().allMatch(row -> row.panels() == least.panels());
        return all
                ? Optional.empty()
                : Optional.of("Of those between which no difference is seen, " + name(least)
                        + " has the fewest panels to cut: " + FigureFormat.count(least.panels()) + ".");
    }

    private Optional<String> boiling() {
        ComparedRow best = comparison.best();
        ComparedRow last = comparison.rows().get(comparison.rows().size() - 1);
        if (best.boil().isEmpty()
                || last.boil().isEmpty()
                || !(best.ledger().caught().value() > 0)) {
            return Optional.empty();
        }
        return Optional.of("The water of the best (" + name(best) + ") " + boil(best) + "; that of the last ("
                + name(last) + ") " + boil(last) + ".");
    }

    private String boil(ComparedRow row) {
        BoilingOutcome answer = row.boil().orElseThrow();
        return heat.boil(answer)
                + (answer instanceof BoilingOutcome.MayBoil
                        ? " (most depends on " + LikelyWords.decides(row.likely()) + ")"
                        : "");
    }

    private String columns() {
        return "Below the best: watts less than the first row, ± one standard error of the difference; none seen: no "
                + "difference seen, it is below " + FigureFormat.fixed(ComparedRow.SEEN_ERRORS, 0)
                + " of its standard errors. Hot spot: the strongest light on the "
                + (words.anyPan() ? "underside" : "disc") + ". "
                + (isAnyLikely()
                        ? "Four in five: between which four in five such cookers lie, each with mirrors, gluing, aim, pan, wind and"
                                + " sun as they may turn out" + (words.anyPan() ? "; boiling times hold the same" : "")
                                + ". "
                                + orNever()
                        : "")
                + (words.anyDisc() && words.anyPan()
                        ? "A bare disc\u2019s watts are the light it catches, a pan\u2019s its cooking power. "
                        : "")
                + (comparison.quick() ? "" : againAndBestPlace());
    }

    private String againAndBestPlace() {
        return "Aim again: minutes from a dead-on aim until " + figures.percent(AimTolerance.USUAL_LOSS)
                + " is lost of what a fresh aim gives; the sun goes its real way where place and time are known, else "
                + "in the worst direction at its fastest, a quarter of a degree a minute. Best place: the watts with each pan where it does best, along the axis, up and down and sideways.";
    }

    private boolean isAnyLikely() {
        return comparison.rows().stream().anyMatch(row -> row.likely().isPresent());
    }

    /** What decides whether the water boils, for the first of which that is in doubt. */
    private String orNever() {
        return comparison.rows().stream()
                .filter(row -> row.boil()
                        .filter(b -> b instanceof BoilingOutcome.MayBoil)
                        .isPresent())
                .findFirst()
                .map(row -> "Where it says \u201cor never\u201d, most depends on " + LikelyWords.decides(row.likely())
                        + ". ")
                .orElse("");
    }

    private Section differs() {
        List<DifferingKey> keys = DifferingKey.of(comparison.rows().stream()
                .sorted(Comparator.comparingInt(ComparedRow::place))
                .map(ComparedRow::variant)
                .toList());
        SectionBuilder out = Section.headed("What differs");
        for (DifferingKey key : keys.subList(0, Math.min(MOST_KEYS, keys.size()))) {
            List<String> values = key.different().stream().map(OneLine::of).toList();
            out.figure(key.key().path(), CompareWords.enumerated(values, MOST_VALUES));
        }
        if (keys.isEmpty()) {
            out.say("Nothing that the program looks at: all of them are one and the same cooker.");
        } else if (keys.size() > MOST_KEYS) {
            out.say("and " + (keys.size() - MOST_KEYS) + " more keys.");
        } else {
            out.say("All else is the same.");
        }
        return out.build();
    }

    private Section cautions() {
        return Cautions.section(hottest(), words.noun());
    }

    private double hottest() {
        return comparison.rows().stream()
                .mapToDouble(ComparedRow::hottestFlux)
                .max()
                .orElse(0);
    }

    private Section sure() {
        SectionBuilder out = Section.headed(Cautions.HOW_SURE);
        String worst = FigureFormat.rounded(100 * comparison.worstRelativeError(), 2) + FigureFormat.NBSP + "%";
        if (!comparison.precisionReached()) {
            out.caution("The precision asked for was not reached before the bound on rays; the watts are" + " sure to ±"
                    + worst + " or better. Allow more rays or ask for less.");
        }
        boolean askew = comparison.variants().stream()
                .anyMatch(variant -> variant.scenario().built().hasTiltedPanels());
        return out.say("All are traced with the same samples, tied to places on the dish, so a difference is "
                        + "surer than the watts are (those to ±" + worst + " or better). What passes "
                        + FigureFormat.fixed(ComparedRow.SEEN_ERRORS, 0)
                        + " standard errors is called a difference here; one in sixteen does so by chance alone.")
                .sayIf(
                        askew && !comparison.quick(),
                        "No two dishes are glued alike: the ± of a difference holds that luck too, from "
                                + GluingLuck.DISHES + " buildings of each with the same care; "
                                + "set mirror.panel-tilt to 0 mrad in all of them to leave it out.")
                .say(
                        FigureFormat.count(comparison.run().rays()) + " rays for each in " + comparison.replicates()
                                + " replicates, seed " + comparison.seed()
                                + ". It says nothing of mirrors, wind or sky that differ from the scenarios; an estimate all the same.")
                .build();
    }
}

package simmerpoint.answer.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.MoneyWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShapeToleranceWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelSize;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.aim.SunTrack;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignGoal;
import simmerpoint.study.design.DesignLimits;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;
import simmerpoint.study.design.PanelLayout;
import simmerpoint.units.UnitSystem;

/** The answer to "what dish does what I want?". */
public final class DesignAnswer {
    private static final double CENTIMETRE = 0.01;
    private static final int FEW_ROWS = 6;
    private static final String PROMISE =
            "Of five cookers built so, four will do what is wanted and one may not. A range leaves out only the weakest and the"
                    + " strongest tenth, so it may begin below what is wanted.";

    private final DesignResult result;
    private final FigureFormat figures;

    private DesignAnswer(DesignResult result, UnitSystem system) {
        this.result = result;
        figures = new FigureFormat(system);
    }

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(DesignResult result, UnitSystem system) {
        return new DesignAnswer(result, system).answer();
    }

    /** The same in a dozen lines. */
    public static Answer brief(DesignResult result, UnitSystem system) {
        return new DesignAnswer(result, system).inBrief();
    }

    private Answer inBrief() {
        SectionBuilder out = result.front().isEmpty()
                ? new DesignLimitWords(result, figures).said()
                : Section.headed("What to build")
                        .say(first())
                        .say(cheapest())
                        .add(shortTable())
                        .say(PROMISE)
                        .say(height());
        String next = NextCommand.line(NextCommand.COMPARE, NextCommand.CUT);
        String title = result.scenario().title();
        OptionalDouble flux = cautionFlux();
        return flux.isPresent()
                ? ShortAnswer.of(title, out, flux.getAsDouble(), Cautions.at(target()), next)
                : ShortAnswer.of(title, out, next);
    }

    /** A few of the dishes from the fewest panels to the smallest, in the columns that decide. */
    private Item shortTable() {
        int all = result.front().size();
        int rows = Math.min(FEW_ROWS, all);
        return named().with(
                        "largest\npanel", c -> c.largestPanel().map(this::size).orElse(""))
                .with("aim\nagain", c -> aim(c.again()))
                .withIf(result.limits().cost().isPresent(), "cost", this::cost)
                .table(IntStream.range(0, rows)
                        .map(k -> rows == 1 ? 0 : k * (all - 1) / (rows - 1))
                        .mapToObj(result.front()::get)
                        .toList());
    }

    private Answer answer() {
        List<Section> sections = new ArrayList<>();
        sections.add(
                result.front().isEmpty()
                        ? new DesignLimitWords(result, figures).section()
                        : Section.headed("What to build")
                                .say(first())
                                .say(cheapest())
                                .add(table())
                                .say(explained())
                                .say(height())
                                .build());
        if (!result.tolerances().isEmpty()) {
            sections.add(new ShapeToleranceWords(dish(), figures).section(heading(), result.tolerances()));
        }
        sections.add(Section.headed("What less or more heat would take")
                .add(otherWatts())
                .say("For other watts as the search saw them, before the check.")
                .build());
        cautionFlux().ifPresent(flux -> sections.add(Cautions.section(flux, target())));
        sections.add(Section.headed(Cautions.HOW_SURE).say(sure()).build());
        return new Answer(OneLine.of(result.scenario().title()), sections);
    }

    private DishPlan dish() {
        return result.fewestPanels().orElseThrow().scenario().dish();
    }

    /** Of which of several dishes it holds. */
    private String heading() {
        return result.front().size() > 1
                ? ShapeToleranceWords.HEADING + " with the fewest panels"
                : ShapeToleranceWords.HEADING;
    }

    private String first() {
        DesignChoice few = result.fewestPanels().orElseThrow();
        DesignChoice small = result.smallestDish().orElseThrow();
        String start = "Fewest panels: " + dish(few.candidate(), figures) + " brings " + power(few)
                + (target().equals("pan") ? " into the water" : " onto the disc") + "; wanted: " + wanted(result.goal())
                + ".";
        if (small.candidate().equals(few.candidate())) {
            return start + " No smaller dish within the limits does it.";
        }
        return start + " Smallest dish: " + dish(small.candidate(), figures) + ", " + power(small) + ".";
    }

    private static String power(DesignChoice choice) {
        return LikelyWords.power(choice.likely().power());
    }

    /** The search leaves the pan where it is. */
    private Optional<String> height() {
        return result.height().map(better -> {
            double raise = result.scenario().stand().raiseMetres() + better.raisedMetres();
            return "The pan stays at the scenario\u2019s height (stand.raise). With the fewest panels, "
                    + HeightWords.better(better, figures) + ": search again with stand.raise at "
                    + figures.length(raise, 2) + " for smaller dishes.";
        });
    }

    private Optional<String> cheapest() {
        return result.cheapest()
                .map(choice -> "Cheapest: " + dish(choice.candidate(), figures) + " for "
                        + money().amount(choice.cost().orElseThrow())
                        + choice.costPerWatt().stream()
                                .mapToObj(each -> ", " + money().perWatt(each))
                                .collect(Collectors.joining())
                        + ".");
    }

    private MoneyWords money() {
        return new MoneyWords(
                result.limits().cost().map(DesignLimits.Cost::currency).orElse(""));
    }

    /** What was wanted: "boil, which takes 460 W" or "500 W". */
    static String wanted(DesignGoal goal) {
        String watts = FigureFormat.rounded(goal.watts(), 3) + FigureFormat.NBSP + "W";
        return goal.level()
                .map(level -> LevelWords.of(level) + (goal.watts() > 0 ? ", which takes " + watts : ""))
                .orElse(watts);
    }

    private String target() {
        return TargetWords.of(result.scenario().target()).noun();
    }

    /** A dish in words: "1.12 m across, 62 cm focal length, 64 panels (16 sectors × 4 rings)". */
    static String dish(DishCandidate candidate, FigureFormat figures) {
        return "a dish of " + centimetres(candidate.diameterCentimetres(), figures) + " with "
                + candidate.layout().panels() + FigureFormat.NBSP + "panels (" + layout(candidate.layout())
                + ") and a focal length of " + centimetres(candidate.focalCentimetres(), figures);
    }

    private static String layout(PanelLayout layout) {
        return layout.hasRings()
                ? layout.sectors() + " sectors, " + layout.rings() + (layout.rings() == 1 ? " ring" : " rings")
                : layout.sectors() + " bent strips";
    }

    private Item table() {
        return named().with("likely", c -> LikelyWords.likely(c.likely().power()))
                .with("four in\nfive", c -> LikelyWords.span(c.likely().power()))
                .with("largest\npanel", c -> c.largestPanel().map(this::size).orElse(""))
                .with("pan above\nground", c -> figures.length(c.panHeightMetres(), 2))
                .with("aim\nagain", c -> aim(c.again()))
                .withIf(result.limits().cost().isPresent(), "cost", this::cost)
                .table(result.front());
    }

    private String cost(DesignChoice choice) {
        return choice.cost().stream().mapToObj(money()::amount).findFirst().orElse("\u2013");
    }

    private Columns<DesignChoice> named() {
        return Columns.<DesignChoice>none()
                .with("panels", c -> Integer.toString(c.candidate().layout().panels()))
                .with("cut", c -> cut(c.candidate().layout()))
                .with("across", c -> centimetres(c.candidate().diameterCentimetres(), figures))
                .with("focal\nlength", c -> centimetres(c.candidate().focalCentimetres(), figures));
    }

    private static String centimetres(int length, FigureFormat figures) {
        return figures.length(length * CENTIMETRE, 3);
    }

    private String size(PanelSize size) {
        return figures.length(size.rimMetres(), 2) + " \u00d7" + FigureFormat.NBSP
                + figures.length(size.ribMetres(), 2);
    }

    static String aim(AimAgain again) {
        return again.minutes()
                .map(minutes -> SkyWords.minutes(minutes.value()))
                .orElse("over " + SkyWords.minutes(AimTolerance.RANGE / SunTrack.FASTEST));
    }

    private String explained() {
        return PROMISE + " " + LikelyWords.method(result.front().get(0).likely())
                + " Each row is the smallest dish for its number of panels that does it, with the focal length"
                + " that suits it best; no other dish has both fewer panels and less diameter. Diameters and focal"
                + " lengths go by whole centimetres. Aim again: minutes from a dead-on aim until a tenth is lost of what a fresh aim"
                + " gives, the sun going its real way where place and time are known, else the worst way at its fastest. The largest panel is given as rim edge \u00d7 length along the rib."
                + result.limits()
                        .highestPanMetres()
                        .map(h -> " The pan stands no higher than " + figures.length(h, 3) + " above the ground.")
                        .orElse("");
    }

    private Item otherWatts() {
        return Columns.<DesignResult.Front>none()
                .with("watts", front -> FigureFormat.rounded(front.watts(), 3) + FigureFormat.NBSP + "W")
                .with(
                        "fewest panels",
                        front -> front.fewestPanels().map(this::inShort).orElse("none within the limits"))
                .with(
                        "smallest dish",
                        front -> front.smallestDish().map(this::inShort).orElse(""))
                .table(result.fronts());
    }

    /** A layout in short: "16\u00d74" sectors and rings, or "24 strips". */
    public static String cut(PanelLayout layout) {
        return layout.hasRings() ? layout.sectors() + "\u00d7" + layout.rings() : layout.sectors() + " strips";
    }

    private String inShort(DishCandidate candidate) {
        return cut(candidate.layout()) + ", " + centimetres(candidate.diameterCentimetres(), figures) + ", f "
                + centimetres(candidate.focalCentimetres(), figures);
    }

    private OptionalDouble cautionFlux() {
        return Stream.concat(result.front().stream(), result.bound().stream())
                .mapToDouble(c -> c.peakFlux().value() + 2 * c.peakFlux().standardError())
                .max();
    }

    private String sure() {
        DesignResult.Run run = result.run();
        return FigureFormat.count(run.dishes()) + " dishes were tried with " + FigureFormat.count(run.searchRays())
                + " rays each (seed " + run.seed() + "); what is shown first was traced anew with "
                + FigureFormat.count(run.checkRays()) + " rays and seed "
                + run.checkSeed() + ", and made larger until four in five drawn"
                + " cookers did what is wanted. Tolerances, mirror, sun, pan and its place are those of the scenario, the same for every dish;"
                + " a larger dish is harder to build as true. Everything is an estimate: build a sector from card first.";
    }
}

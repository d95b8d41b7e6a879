package simmerpoint.answer.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.MoneyWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.build.DepthTolerance;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCheck;
import simmerpoint.workshop.BuildCost;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.CuttingStock.Sheeting;
import simmerpoint.workshop.Piece;
import simmerpoint.workshop.RibShape;
import simmerpoint.workshop.SheetLayout;
import simmerpoint.workshop.StringRule;
import simmerpoint.workshop.StripEdges;
import simmerpoint.workshop.WindLoad;

/** The answer to "what do I cut?". */
public final class CutAnswer {
    private static final String COVERED =
            "Leave the film's cover on until the dish stands in the shade, and have a cloth that covers the whole "
                    + "dish ready before the last panel is on: a dish that lies about uncovered can set things on fire.";

    private final CutPlan plan;
    private final UnitSystem units;
    private final FigureFormat figures;

    private CutAnswer(CutPlan plan, UnitSystem units) {
        this.plan = plan;
        this.units = units;
        figures = new FigureFormat(units);
    }

    /** The answer for a plan, lengths as a saw wants them. */
    public static Answer of(CutPlan plan, UnitSystem units) {
        return new CutAnswer(plan, units).answer();
    }

    /** The same in a dozen lines. */
    public static Answer brief(CutPlan plan, UnitSystem units) {
        CutAnswer answer = new CutAnswer(plan, units);
        return ShortAnswer.of(
                plan.scenario().title(),
                Section.headed("What to cut")
                        .say(answer.counts())
                        .add(answer.sheets())
                        .say(answer.cost())
                        .say(answer.weight())
                        .say(answer.tips())
                        .caution(COVERED),
                "With --pdf FILE: the patterns at full size. " + NextCommand.line());
    }

    private Answer answer() {
        List<Section> sections = new ArrayList<>();
        sections.add(Section.headed("What to cut")
                .say(summary())
                .add(pieces())
                .say(straightEdges())
                .build());
        plan.rib().ifPresent(rib -> sections.add(ribs(rib)));
        plan.string().ifPresent(string -> sections.add(string(string)));
        plan.check().ifPresent(check -> sections.add(check(check)));
        plan.trace()
                .flatMap(BuildTrace::ribs)
                .ifPresent(ribs -> sections.add(new AsBuiltSection(plan, ribs, units).section()));
        sections.add(Section.headed("What to buy").add(sheets()).say(cost()).build());
        sections.add(Section.headed("Weight and wind").say(weight()).say(wind()).build());
        sections.add(Section.headed("Take care").addAll(cautions()).build());
        return new Answer(OneLine.of(plan.scenario().title()), sections);
    }

    private String summary() {
        return counts() + " Lengths are exact for the dish that is traced, gaps taken off.";
    }

    private String counts() {
        int panels = plan.panels().stream().mapToInt(Piece::count).sum();
        return plan.rib().map(rib -> rib.count() + " ribs, ").orElse("") + panels
                + (panels == 1 ? " panel" : " panels")
                + (plan.panels().size() == 1 ? "" : " of " + plan.panels().size() + " shapes")
                + " and film for each" + (hasOwnFilm() ? "" : ", cut to the same shapes") + ".";
    }

    private Item pieces() {
        return Columns.<Piece>none()
                .with("piece", Piece::name)
                .with("how many", piece -> Integer.toString(piece.count()))
                .with("needs a piece of", this::size)
                .table(hasOwnFilm() ? plan.pieces() : withoutFilm());
    }

    private boolean hasOwnFilm() {
        return plan.stock().filmEdge() > 0;
    }

    private List<Piece> withoutFilm() {
        return plan.pieces().stream()
                .filter(piece -> piece.use() != Piece.Use.FILM)
                .toList();
    }

    private String size(Piece piece) {
        return SawLength.text(piece.outline().width(), piece.outline().height(), units);
    }

    private Optional<String> straightEdges() {
        return plan.panels().stream().filter(Piece::bent).findFirst().map(strip -> {
            StripEdges edges = StripEdges.of(strip.outline());
            return "The long edges of a strip are slightly curved. Cut straight from corner to corner they would be off by up to "
                    + figures.length(Math.abs(edges.bulge()), 2) + ", which "
                    + (edges.areaShare() < 0 ? "loses " : "adds ") + figures.percent(Math.abs(edges.areaShare()))
                    + " of the mirror. Bend each strip along its length, over the ribs.";
        });
    }

    private Section ribs(RibShape rib) {
        return Section.headed("The ribs' edge")
                .say("Measured from the dish's middle: out along the level, and up from there to the edge. Ribs end "
                        + saw(rib.innerEnd()) + " from the middle, where they meet side by side; the stock is "
                        + saw(rib.stock().belowCurve()) + " high below the middle of the curve.")
                .add(Columns.<Double>none()
                        .with("out", r -> saw(r))
                        .with("up", r -> saw(rib.height(r)))
                        .table(radii(rib)))
                .sayIf(
                        !rib.ribs().curved(),
                        "The edge is straight between the rings' borders, which are marked on the pattern.")
                .build();
    }

    /** A dozen round distances and the rim. */
    private List<Double> radii(RibShape rib) {
        double step = units == UnitSystem.METRIC ? 0.05 : 2 * units.shortUnitMetres();
        if (!rib.ribs().curved()) {
            return Arrays.stream(rib.ribs().borders()).boxed().toList();
        }
        List<Double> all = new ArrayList<>();
        for (double r = step * Math.ceil(rib.hub() / step); r < rib.rim() - step / 4; r += step) {
            all.add(r);
        }
        all.add(rib.rim());
        return all;
    }

    private Section string(StringRule s) {
        return Section.headed("Drawing the curve with a string")
                .say("Draw a straight line: the axis. Drive a pin into it " + saw(s.focus())
                        + " above the middle of the dish. Fix a straight bar square to the axis " + saw(s.bar())
                        + " above the middle. Take a string " + saw(s.string())
                        + " long. Fix one end to the pin, let the other slide along the bar, and keep that part of the string square to the "
                        + "bar: a pencil that holds the string tight against a square draws the curve.")
                .say("To check: the curve is " + saw(s.depth()) + " high at the rim, and " + saw(s.halfHeight())
                        + " at half that distance, " + saw(s.halfRadius()) + " from the middle.")
                .build();
    }

    private Section check(BuildCheck check) {
        return Section.headed("Checking the build")
                .say("Across the rim, from a rib\u2019s tip through the middle, it must be " + saw(check.acrossRim())
                        + ", from one rib\u2019s tip to the next " + saw(check.betweenTips())
                        + ". Lay a straight edge across the rim, through the middle, and measure down to the mirror:")
                .add(Columns.<BuildCheck.Depth>none()
                        .with("from the middle", d -> saw(d.radius()))
                        .with("depth", d -> saw(d.depth()))
                        .withIf(
                                hasTolerances(),
                                "within",
                                d -> plan.tolerance(d.radius())
                                        .map(t -> ToleranceWords.of(t, units))
                                        .orElse(""))
                        .table(check.depths()))
                .sayIf(
                        hasTolerances(),
                        "Ribs that are off by as much as that at one of these distances, by turns two up and two down, cost "
                                + FigureFormat.rounded(100 * DepthTolerance.LOSS, 1) + FigureFormat.NBSP
                                + "% of the watts.")
                .say("A card with the ribs\u2019 curve, to lay in, is among the patterns.")
                .build();
    }

    private boolean hasTolerances() {
        return plan.trace().stream().anyMatch(trace -> !trace.tolerances().isEmpty());
    }

    /** A row of what to buy. */
    private record Purchase(String name, SheetLayout layout) {}

    private Item sheets() {
        List<Purchase> rows = new ArrayList<>();
        if (plan.rib().isPresent()) {
            rows.add(new Purchase(sheeting(plan.stock().ribMaterial()) + " for ribs", plan.ribSheets()));
        }
        rows.add(new Purchase(sheeting(plan.stock().panelMaterial()) + " for panels", plan.panelSheets()));
        rows.add(new Purchase("mirror film", plan.filmSheets()));
        return Columns.<Purchase>none()
                .with("what", Purchase::name)
                .with(
                        "size",
                        p -> SawLength.text(
                                p.layout().sheet().width(), p.layout().sheet().length(), units))
                .with("how many", p -> Integer.toString(p.layout().sheets().size()))
                .with("waste", p -> figures.percent(1 - p.layout().usedShare()))
                .table(rows);
    }

    private Optional<String> cost() {
        return plan.cost().map(cost -> {
            MoneyWords money = new MoneyWords(cost.currency());
            String perWatt = plan.trace().stream()
                    .mapToDouble(trace -> trace.watts().value())
                    .mapToObj(cost::perWatt)
                    .flatMapToDouble(OptionalDouble::stream)
                    .mapToObj(each -> ", " + money.perWatt(each) + " of cooking power")
                    .collect(Collectors.joining());
            return "It costs " + money.amount(cost.total()) + perWatt + ": " + parts(cost, money) + ".";
        });
    }

    private static String parts(BuildCost cost, MoneyWords money) {
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("sheets for ribs", cost.ribs());
        parts.put("sheets for panels", cost.panels());
        parts.put("film", cost.film());
        parts.put("stand", cost.stand());
        parts.put("all else", cost.rest());
        return parts.entrySet().stream()
                .filter(part -> part.getValue() > 0)
                .map(part -> part.getKey() + " " + money.amount(part.getValue()))
                .collect(Collectors.joining(", "));
    }

    private String sheeting(Sheeting sheeting) {
        String thickness = units == UnitSystem.METRIC
                ? figures.length(sheeting.thickness(), 2)
                : SawLength.text(sheeting.thickness(), units);
        return thickness + " " + sheeting.material().name();
    }

    private String weight() {
        String ribs = plan.rib().isPresent() ? "ribs " + mass(plan.ribMass()) + ", " : "";
        return "About: " + ribs + "panels " + mass(plan.panelMass()) + ", film " + mass(plan.filmMass()) + "; "
                + mass(plan.mass())
                + " in all, without glue, screws and rim. Densities are typical ones; the shop's sheet may be a fifth off.";
    }

    private String mass(double kilograms) {
        return units == UnitSystem.METRIC
                ? FigureFormat.rounded(kilograms, 2) + FigureFormat.NBSP + "kg"
                : FigureFormat.rounded(kilograms / UnitSystem.POUND_KILOGRAMS, 2) + FigureFormat.NBSP + "lb";
    }

    private String wind() {
        WindLoad wind = plan.wind();
        return tips() + " At " + speed(8) + ", a fresh breeze, it pushes with " + force(wind.force(8))
                + ", and dish and stand together would need " + mass(wind.massFor(8))
                + ". Gusts push harder than the mean wind: turn the dish down or tie it well before that.";
    }

    private String tips() {
        return "Wind straight into the dish tips it over its feet from about "
                + speed(plan.wind().tippingSpeed()) + " on.";
    }

    private String force(double newtons) {
        return units == UnitSystem.METRIC
                ? FigureFormat.rounded(newtons, 2) + FigureFormat.NBSP + "N"
                : FigureFormat.rounded(newtons / UnitSystem.POUND_FORCE_NEWTONS, 2) + FigureFormat.NBSP + "lbf";
    }

    private String speed(double metresPerSecond) {
        return units == UnitSystem.METRIC
                ? FigureFormat.rounded(metresPerSecond, 2) + FigureFormat.NBSP + "m/s"
                : FigureFormat.rounded(metresPerSecond / UnitSystem.MILE_PER_HOUR, 2) + FigureFormat.NBSP + "mph";
    }

    private String saw(double metres) {
        return SawLength.text(metres, units);
    }

    private static List<Item.Caution> cautions() {
        return List.of(
                new Item.Caution(COVERED),
                new Item.Caution(
                        "Knife and saw: cut away from yourself and clamp the rule. Glue and its solvents: outdoors or by an open "
                                + "window. Weights and wind are estimates: local codes and licensed practice come first."));
    }
}

package simmerpoint.answer.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShapeToleranceWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.dish.DishPlan;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.build.ShapeTolerance;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CutPlan;
import simmerpoint.workshop.Piece;
import simmerpoint.workshop.StripEdges;
import simmerpoint.workshop.ThroughRibs;

/** The answer to "what do I cut?". */
public final class CutAnswer {
    /** Sheet narrower than that is hard to cut, hold and glue (common practice), m. */
    private static final double NARROWEST = 0.005;

    private static final String COVERED =
            "Leave the film's cover on until the dish stands in the shade, and have a cloth that covers the whole "
                    + "dish ready before the last panel is on: a dish that lies about uncovered can set things on fire.";

    private final CutPlan plan;
    private final UnitSystem units;
    private final FigureFormat figures;
    private final ShapeSections shapes;
    private final BuyWords buying;
    private final WeightWords weights;
    private final BendingWords bending;
    private final ShapeToleranceWords trueness;

    private CutAnswer(CutPlan plan, UnitSystem units) {
        this.plan = plan;
        this.units = units;
        figures = new FigureFormat(units);
        shapes = new ShapeSections(plan, units);
        buying = new BuyWords(plan, units);
        weights = new WeightWords(plan, units);
        bending = new BendingWords(plan, units);
        trueness = new ShapeToleranceWords(plan.scenario().dish(), figures);
    }

    /** The answer for a plan, lengths as a saw wants them. */
    public static Answer of(CutPlan plan, UnitSystem units) {
        return new CutAnswer(plan, units).answer();
    }

    /**
     * The same in a dozen lines.
     *
     * @param printed whether the patterns were asked for, so that nobody needs to be told of them
     */
    public static Answer brief(CutPlan plan, UnitSystem units, boolean printed) {
        CutAnswer answer = new CutAnswer(plan, units);
        return ShortAnswer.of(
                plan.scenario().title(),
                Section.headed("What to cut")
                        .say(answer.counts())
                        .say(answer.narrowEnds())
                        .add(answer.buying.sheets())
                        .say(answer.buying.lengths())
                        .say(answer.buying.saving())
                        .say(answer.buying.cost())
                        .say(answer.asBuilt().map(AsBuiltSection::sentence))
                        .say(answer.weights.weight())
                        .say(answer.weights.tips())
                        .caution(COVERED),
                (printed ? "" : "With --pdf FILE: the patterns at full size. ") + NextCommand.line());
    }

    private Answer answer() {
        List<Section> sections = new ArrayList<>();
        sections.add(Section.headed("What to cut")
                .say(summary())
                .add(pieces())
                .say(straightEdges())
                .say(bending.springback())
                .say(narrowEnds())
                .build());
        plan.rib().ifPresent(rib -> sections.add(shapes.ribs(rib)));
        if (!plan.bevels().isEmpty()) {
            sections.add(shapes.bevels());
        }
        plan.string().ifPresent(string -> sections.add(shapes.string(string)));
        plan.rib().flatMap(rib -> new CurveWords(plan, rib, units).section()).ifPresent(sections::add);
        plan.check().ifPresent(check -> sections.add(shapes.check(check)));
        asBuilt().ifPresent(ribs -> sections.add(ribs.section()));
        tolerances().ifPresent(found -> sections.add(trueness.section(found)));
        sections.add(Section.headed("What to buy")
                .add(buying.sheets())
                .say(buying.lengths())
                .say(buying.saving())
                .say(buying.cost())
                .build());
        sections.add(Section.headed("Weight and wind")
                .say(weights.weight())
                .say(weights.sag())
                .say(weights.mount())
                .say(weights.wind())
                .build());
        sections.add(Section.headed("Take care").addAll(cautions()).build());
        return new Answer(OneLine.of(plan.scenario().title()), sections);
    }

    private Optional<List<ShapeTolerance>> tolerances() {
        return plan.trace().map(BuildTrace::shape).filter(found -> !found.isEmpty());
    }

    private Optional<AsBuiltSection> asBuilt() {
        return plan.trace().flatMap(BuildTrace::ribs).map(ribs -> new AsBuiltSection(plan, ribs, units));
    }

    private String summary() {
        return counts() + " Lengths are exact for the dish that is traced, gaps taken off.";
    }

    private String counts() {
        int panels = plan.panels().stream().mapToInt(Piece::count).sum();
        return ribs() + panels
                + (panels == 1 ? " panel" : " panels")
                + (plan.panels().size() == 1 ? "" : " of " + plan.panels().size() + " shapes")
                + " and film for each" + (plan.hasOwnFilm() ? "" : ", cut to the same shapes") + ".";
    }

    private String ribs() {
        return plan.rib()
                .map(rib -> {
                    int through = plan.throughRibs().map(ThroughRibs::count).orElse(0);
                    int single = rib.standing() - 2 * through;
                    return (single > 0 ? single + " ribs, " : "")
                            + (through == 0
                                    ? ""
                                    : through + (through == 1 ? " rib" : " ribs") + " through the middle, ");
                })
                .orElse("");
    }

    private Item pieces() {
        return Columns.<Piece>none()
                .with("piece", Piece::name)
                .with("how many", piece -> Integer.toString(piece.count()))
                .with("needs a piece of", this::size)
                .table(plan.hasOwnFilm() ? plan.pieces() : withoutFilm());
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
        return strip().map(strip -> {
            StripEdges edges = StripEdges.of(strip.outline());
            return "The long edges of a strip are slightly curved. Cut straight from corner to corner they would be off by up to "
                    + fine(Math.abs(edges.bulge())) + ", which "
                    + (edges.areaShare() < 0 ? "loses " : "adds ") + figures.percent(Math.abs(edges.areaShare()))
                    + " of the mirror. Bend each strip along its length, over the ribs.";
        });
    }

    /** A small length: tenths of a millimetre, or sixteenths of an inch. */
    private String fine(double metres) {
        String sixteenths = SawLength.text(metres, UnitSystem.INCH);
        return units == UnitSystem.METRIC
                ? figures.length(metres, 2)
                : sixteenths.startsWith("0") ? "less than " + SawLength.text(0.0254 / 16, units) : sixteenths;
    }

    private Optional<Piece> strip() {
        return plan.panels().stream().filter(Piece::bent).findFirst();
    }

    /** Strips that end in points tear and cannot be held. */
    private Optional<String> narrowEnds() {
        DishPlan dish = plan.scenario().dish();
        return strip().flatMap(strip -> plan.rib()).flatMap(rib -> {
            double chord = 2 * Math.sin(Math.PI / rib.count());
            double wide = Math.max(0, chord * rib.hub() - dish.gapMetres());
            double hub = 2 * (NARROWEST + dish.gapMetres()) / chord;
            return wide < NARROWEST
                    ? Optional.of(
                            "At the hub the strips are " + (fine(wide).startsWith("less") ? "" : "only ") + fine(wide)
                                    + " wide, which tears and cannot be held: a hub of " + saw(hub) + " leaves them "
                                    + saw(NARROWEST) + ".")
                    : Optional.empty();
        });
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

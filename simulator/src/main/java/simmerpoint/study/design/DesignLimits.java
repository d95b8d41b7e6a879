package simmerpoint.study.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.DishPlan;
import simmerpoint.scenario.Scenario;

/**
 * What a design may be. Lengths of the dish in whole centimetres.
 *
 * @param cuts kinds of cut that may be built, in order; of {@link PanelLayout#CUTS}
 * @param diameter smallest and largest, cm
 * @param focal shortest and longest focal length, cm
 * @param sectors fewest and most
 * @param rings fewest and most, of flat rings
 * @param mostPanels most panels in all
 * @param sheet sheet that the largest panel must fit on, if any
 * @param highestPanMetres highest place of the pan's underside above the ground, if it matters, m
 * @param cost what a dish costs and may cost at most, if prices are known
 * @param buildable whether a cooker can be cut from the sheets there are, if that matters
 */
public record DesignLimits(
        List<CutKind> cuts,
        Span diameter,
        Span focal,
        Span sectors,
        Span rings,
        int mostPanels,
        Optional<Sheet> sheet,
        Optional<Double> highestPanMetres,
        Optional<Cost> cost,
        Optional<Predicate<Scenario>> buildable) {
    /** Keeps a copy of the list. */
    public DesignLimits {
        cuts = List.copyOf(cuts);
    }

    /** Usual limits around a scenario's dish: half to one and a half of its diameter, its cut, its highest pan. */
    public static DesignLimits around(Scenario scenario) {
        DishPlan dish = scenario.dish();
        List<CutKind> own = PanelLayout.CUTS.stream()
                .filter(kind -> kind.equals(dish.cut().kind()))
                .toList();
        return new DesignLimits(
                own.isEmpty() ? PanelLayout.CUTS : own,
                around(dish.diameterMetres(), 0.5, 1.5),
                around(dish.focalLengthMetres(), 0.5, 2),
                new Span(6, 36),
                new Span(1, 6),
                150,
                Optional.empty(),
                Optional.of(scenario.heights().highestPanMetres()),
                Optional.empty(),
                Optional.empty());
    }

    private static Span around(double metres, double least, double most) {
        int from = Math.max(1, (int) Math.round(100 * least * metres));
        return new Span(from, Math.max(from, (int) Math.round(100 * most * metres)));
    }

    /** The same, and what a dish costs. */
    public DesignLimits withCost(Optional<Cost> known) {
        return new DesignLimits(
                cuts, diameter, focal, sectors, rings, mostPanels, sheet, highestPanMetres, known, buildable);
    }

    /** The same, and which cookers can be cut. */
    public DesignLimits withBuildable(Predicate<Scenario> known) {
        return new DesignLimits(
                cuts, diameter, focal, sectors, rings, mostPanels, sheet, highestPanMetres, cost, Optional.of(known));
    }

    /**
     * From so many to so many, both included.
     *
     * @param from the least
     * @param to the most, at least {@code from}
     */
    public record Span(int from, int to) {
        /** Refuses what is the wrong way round. */
        public Span {
            if (!(from <= to)) {
                throw new IllegalArgumentException("from " + from + " to " + to + " is the wrong way round");
            }
        }

        /** Kept within. */
        int clamp(int value) {
            return Math.max(from, Math.min(to, value));
        }
    }

    /**
     * A sheet of material.
     *
     * @param longMetres its longer side, m
     * @param shortMetres its shorter side, m
     */
    public record Sheet(double longMetres, double shortMetres) {
        /** Whether a rectangle fits, either way round. */
        boolean holds(double a, double b) {
            return Math.max(a, b) <= longMetres && Math.min(a, b) <= shortMetres;
        }
    }

    /**
     * What a dish costs, in some currency.
     *
     * @param of the cost of a cooker; empty if it cannot be built
     * @param currency any words
     * @param most the most it may cost; infinite if that does not matter
     */
    public record Cost(Function<Scenario, OptionalDouble> of, String currency, double most) {
        private boolean allows(Scenario scenario) {
            return most == Double.POSITIVE_INFINITY || of.apply(scenario).orElse(Double.POSITIVE_INFINITY) <= most;
        }

        private Cost withoutLimit() {
            return new Cost(of, currency, Double.POSITIVE_INFINITY);
        }
    }

    /** One of the limits. */
    public enum Limit {
        /** The largest diameter. */
        DIAMETER,
        /** The number of panels, sectors or rings. */
        PANELS,
        /** The range of focal lengths. */
        FOCAL_LENGTH,
        /** The sheet that a panel must fit on. */
        SHEET,
        /** The pan's height. */
        PAN_HEIGHT,
        /** The sheets that ribs and panels are cut from. */
        STOCK,
        /** What it costs. */
        COST
    }

    /** Every layout that is allowed, fewest panels first. */
    List<PanelLayout> layouts() {
        List<PanelLayout> out = new ArrayList<>();
        for (CutKind cut : cuts) {
            Span ringsOfCut = PanelLayout.hasRings(cut) ? rings : new Span(1, 1);
            for (int n = sectors.from(); n <= sectors.to(); n++) {
                for (int m = ringsOfCut.from(); m <= ringsOfCut.to(); m++) {
                    if (n * m <= mostPanels) {
                        out.add(new PanelLayout(cut, n, m));
                    }
                }
            }
        }
        out.sort(Comparator.comparingInt(PanelLayout::panels)
                .thenComparing(Comparator.comparingInt(PanelLayout::rings)));
        return out;
    }

    /** Whether a dish keeps to the limits on sheet, pan height, cost and what it is cut from. */
    boolean allow(Scenario scenario) {
        boolean fits = sheet.isEmpty()
                || scenario.dish()
                        .largestPanel()
                        .filter(size -> sheet.get().holds(size.rimMetres(), size.ribMetres()))
                        .isPresent();
        return fits
                && scenario.panHeightMetres() <= highestPanMetres.orElse(Double.POSITIVE_INFINITY)
                && buildable.stream().allMatch(can -> can.test(scenario))
                && (cost.isEmpty() || cost.get().allows(scenario));
    }

    /** Whether there is such a limit at all. */
    boolean has(Limit limit) {
        return switch (limit) {
            case SHEET -> sheet.isPresent();
            case PAN_HEIGHT -> highestPanMetres.isPresent();
            case STOCK -> buildable.isPresent();
            case COST -> cost.isPresent() && Double.isFinite(cost.get().most());
            default -> true;
        };
    }

    /** The same without one of its limits, or with that one far wider. */
    DesignLimits without(Limit limit) {
        boolean panels = limit == Limit.PANELS;
        return new DesignLimits(
                cuts,
                limit == Limit.DIAMETER ? wider(diameter, 2) : diameter,
                limit == Limit.FOCAL_LENGTH ? new Span(Math.max(5, focal.from() / 3), 3 * focal.to()) : focal,
                panels ? wider(sectors, 2) : sectors,
                panels ? wider(rings, 2) : rings,
                panels ? 4 * mostPanels : mostPanels,
                limit == Limit.SHEET ? Optional.empty() : sheet,
                limit == Limit.PAN_HEIGHT ? Optional.empty() : highestPanMetres,
                limit == Limit.COST ? cost.map(Cost::withoutLimit) : cost,
                limit == Limit.STOCK ? Optional.empty() : buildable);
    }

    private static Span wider(Span span, int factor) {
        return new Span(span.from(), factor * span.to());
    }
}

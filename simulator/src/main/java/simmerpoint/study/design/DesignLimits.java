package simmerpoint.study.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a design may be. Lengths of the dish in whole centimetres.
 *
 * @param cuts kinds of cut that may be built: true for bent strips, false for flat rings; in order
 * @param diameter smallest and largest, cm
 * @param focal shortest and longest focal length, cm
 * @param sectors fewest and most
 * @param rings fewest and most, of flat rings
 * @param mostPanels most panels in all
 * @param sheet sheet that the largest panel must fit on, if any
 * @param highestPanMetres highest place of the pan's underside above the ground, if it matters, m
 */
public record DesignLimits(
        List<Boolean> cuts,
        Span diameter,
        Span focal,
        Span sectors,
        Span rings,
        int mostPanels,
        Optional<Sheet> sheet,
        Optional<Double> highestPanMetres) {
    /** Keeps a copy of the list. */
    public DesignLimits {
        cuts = List.copyOf(cuts);
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
        PAN_HEIGHT
    }

    /** Every layout that is allowed, fewest panels first. */
    List<PanelLayout> layouts() {
        List<PanelLayout> out = new ArrayList<>();
        for (boolean bent : cuts) {
            for (int n = sectors.from(); n <= sectors.to(); n++) {
                for (int m = bent ? 1 : rings.from(); m <= (bent ? 1 : rings.to()); m++) {
                    if (n * m <= mostPanels) {
                        out.add(new PanelLayout(bent, n, m));
                    }
                }
            }
        }
        out.sort(Comparator.comparingInt(PanelLayout::panels)
                .thenComparing(Comparator.comparingInt(PanelLayout::rings)));
        return out;
    }

    /** Whether there is such a limit at all. */
    boolean has(Limit limit) {
        return switch (limit) {
            case SHEET -> sheet.isPresent();
            case PAN_HEIGHT -> highestPanMetres.isPresent();
            default -> true;
        };
    }

    /** The same without one of its limits, or with that one far wider. */
    DesignLimits without(Limit limit) {
        return switch (limit) {
            case DIAMETER ->
                new DesignLimits(cuts, wider(diameter, 2), focal, sectors, rings, mostPanels, sheet, highestPanMetres);
            case PANELS ->
                new DesignLimits(
                        cuts,
                        diameter,
                        focal,
                        wider(sectors, 2),
                        wider(rings, 2),
                        4 * mostPanels,
                        sheet,
                        highestPanMetres);
            case FOCAL_LENGTH ->
                new DesignLimits(
                        cuts,
                        diameter,
                        new Span(Math.max(5, focal.from() / 3), 3 * focal.to()),
                        sectors,
                        rings,
                        mostPanels,
                        sheet,
                        highestPanMetres);
            case SHEET ->
                new DesignLimits(cuts, diameter, focal, sectors, rings, mostPanels, Optional.empty(), highestPanMetres);
            case PAN_HEIGHT ->
                new DesignLimits(cuts, diameter, focal, sectors, rings, mostPanels, sheet, Optional.empty());
        };
    }

    private static Span wider(Span span, int factor) {
        return new Span(span.from(), factor * span.to());
    }
}

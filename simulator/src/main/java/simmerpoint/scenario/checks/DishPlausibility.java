package simmerpoint.scenario.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelSize;
import simmerpoint.dish.Zone;
import simmerpoint.dish.cut.Clipped;
import simmerpoint.dish.cut.MeasuredMirror;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.cut.Rim;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.dish.cut.Zoned;
import simmerpoint.dish.points.AxisFit;
import simmerpoint.geometry.Direction;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.QuantityWriter;

/** Dishes that can be built and yet hardly were meant, one sentence each. */
final class DishPlausibility {
    private static final double WIDE_GAP = 0.5;
    private static final double BARE = 0.5;
    private static final double BARE_ZONE = 0.3;
    private static final double LEAST_HIDDEN = 0.1;
    private static final double OFF_FOCUS = 0.1;
    private static final double CORNERS = 0.005;

    /** Readings of one place by a ruler agree so well, m: common practice. */
    private static final double AGREE = 0.003;

    private DishPlausibility() {}

    static List<String> of(DishPlan dish) {
        List<String> said = new ArrayList<>();
        gap(dish).ifPresent(said::add);
        cover(dish).ifPresent(said::add);
        focus(dish).ifPresent(said::add);
        bareZones(dish, said);
        hidden(dish, said);
        bareBeyond(dish).ifPresent(said::add);
        corners(dish).ifPresent(said::add);
        if (dish.cut() instanceof OffAxisShell shell) {
            said.addAll(ShellPlausibility.of(shell));
        }
        if (dish.cut() instanceof MeasuredMirror mirror) {
            axis(mirror).ifPresent(said::add);
            twice(mirror).ifPresent(said::add);
        }
        return said;
    }

    /** Points of a dish that leaned when it was measured. */
    private static Optional<String> axis(MeasuredMirror mirror) {
        if (!mirror.shape().axis().leans()) {
            return Optional.empty();
        }
        AxisFit axis = mirror.shape().axis();
        return Optional.of(String.format(
                Locale.ROOT,
                "dish.surface.points: the paraboloid that fits the points best leans %.1f ± %.1f° from z, mostly %s; if the dish"
                        + " leaned when it was measured, write axis: fitted",
                Math.toDegrees(axis.angle()),
                Math.toDegrees(2 * axis.deviation()),
                way(axis)));
    }

    /** Places measured twice that do not agree. */
    private static Optional<String> twice(MeasuredMirror mirror) {
        double apart = mirror.shape().apart();
        return apart > AGREE
                ? Optional.of("dish.surface.points: heights measured at the same place differ by up to "
                        + QuantityWriter.length(apart)
                        + "; their mean is taken; measure them again, x and y to the millimetre")
                : Optional.empty();
    }

    private static String way(AxisFit axis) {
        return Math.abs(axis.slopeX()) >= Math.abs(axis.slopeY())
                ? (axis.slopeX() > 0 ? "upwards" : "downwards")
                : (axis.slopeY() > 0 ? "to the right" : "to the left");
    }

    private static Optional<String> gap(DishPlan dish) {
        return dish.largestPanel()
                .map(PanelSize::narrowestMetres)
                .filter(narrowest -> dish.gapMetres() >= WIDE_GAP * narrowest)
                .map(narrowest -> "dish.gap: gaps of " + QuantityWriter.length(dish.gapMetres()) + " beside panels of "
                        + QuantityWriter.length(narrowest) + " let much of the light through; check the unit");
    }

    private static Optional<String> cover(DishPlan dish) {
        MirrorSurface surface = dish.surface(Direction.Z);
        double share = surface.apertureArea() / surface.outlineArea();
        return share < BARE
                ? Optional.of("dish: mirrors cover only " + Math.round(100 * share)
                        + " % of its outline; the rest falls through hub and gaps")
                : Optional.empty();
    }

    /** How much of a zone has no mirror is not seen in the share of the whole dish. */
    private static void bareZones(DishPlan dish, List<String> said) {
        for (Zone zone : dish.cut().zones()) {
            double bare = Zoned.bareShare(zone);
            if (bare > BARE_ZONE) {
                Cut own = zone.plan().cut();
                boolean tiles = own.kind().parameters().contains(Tiles.TILE);
                String hint = !tiles
                        ? ""
                        : own.leavesOutCutPanels()
                                ? "; with at-rim: cut, or smaller tiles, less is"
                                : "; with smaller tiles less is";
                said.add(ZoneKeys.section(zone.name()) + ": " + Math.round(100 * bare) + " % of this zone has no mirror"
                        + hint);
            }
        }
    }

    /** What lies under another zone is paid for and does nothing. */
    private static void hidden(DishPlan dish, List<String> said) {
        if (dish.cut() instanceof Zoned zoned) {
            zoned.hiddenShares().forEach((zone, share) -> {
                if (share > LEAST_HIDDEN) {
                    said.add(ZoneKeys.section(zone) + ": " + Math.max(1, Math.round(100 * share))
                            + " % of the mirrors of this zone lie under those of another; they are not counted");
                }
            });
        }
    }

    /** Zones that all end inside the rim. */
    private static Optional<String> bareBeyond(DishPlan dish) {
        return dish.cut().zones().stream()
                .map(zone -> zone.plan().diameterMetres())
                .max(Comparator.naturalOrder())
                .filter(widest -> widest < dish.diameterMetres() * (1 - 1e-9))
                .map(widest -> ZoneKeys.SECTION + ": the outermost zone ends " + QuantityWriter.length(widest)
                        + " across, and the dish is " + QuantityWriter.length(dish.diameterMetres())
                        + " wide; the rest is bare");
    }

    /** A diameter that rounds off a rim's corners, or that nothing reaches. */
    private static Optional<String> corners(DishPlan dish) {
        Optional<Rim> straight = Stream.concat(
                        Stream.of(dish.cut()),
                        dish.cut().zones().stream().map(zone -> zone.plan().cut()))
                .flatMap(cut -> cut instanceof Clipped clipped ? Stream.of(clipped.rim()) : Stream.of())
                .filter(rim -> rim.sides() > 0)
                .findFirst();
        return straight.flatMap(rim -> corners(rim, dish.diameterMetres()));
    }

    private static Optional<String> corners(Rim rim, double diameter) {
        double across = rim.acrossCorners();
        boolean byDiameter = rim.widthMetres() > 0.999 * diameter * Math.cos(Math.PI / rim.sides())
                && rim.widthMetres() < 1.001 * diameter * Math.cos(Math.PI / rim.sides());
        if (byDiameter || Math.abs(across - diameter) < CORNERS * diameter) {
            return Optional.empty();
        }
        String needed = RimValues.wholeCorners(rim);
        return Optional.of(
                across > diameter
                        ? "dish.diameter: " + QuantityWriter.length(diameter)
                                + " rounds off the corners of the rim; with diameter: " + needed + " they are whole"
                        : "dish.diameter: nothing of the mirror is as far out as "
                                + QuantityWriter.length(diameter) + "; the corners of the rim are on a circle " + needed
                                + " wide: write diameter: " + needed);
    }

    private static Optional<String> focus(DishPlan dish) {
        double found = dish.cut().focalLengthMetres(dish);
        boolean gathers = found > 0 && found < Double.POSITIVE_INFINITY;
        if (!gathers) {
            return Optional.of("dish.surface.file: the panels of the mesh do not gather light in front of them; is it"
                    + " upside down?");
        }
        return Math.abs(found / dish.focalLengthMetres() - 1) <= OFF_FOCUS
                ? Optional.empty()
                : Optional.of("dish.focal-length: the panels of the mesh focus about " + QuantityWriter.length(found)
                        + " from their middle, not " + QuantityWriter.length(dish.focalLengthMetres()));
    }
}

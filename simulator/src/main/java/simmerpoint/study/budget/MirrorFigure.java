package simmerpoint.study.budget;

import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.Zone;
import simmerpoint.dish.mirror.Mirror;

/**
 * A figure of a mirror that can be made a step larger or smaller.
 *
 * @param key short name for files
 * @param name in a builder's words
 * @param unit of its steps
 * @param most it can be, SI; the least is 0
 * @param figure reads it, SI
 * @param with a mirror with another
 * @param meansSomething on which cuts it means something
 */
record MirrorFigure(
        String key,
        String name,
        Parameter.Unit unit,
        double most,
        ToDoubleFunction<Mirror> figure,
        BiFunction<Mirror, Double, Mirror> with,
        Predicate<Cut> meansSomething) {
    /** The same, only where there are panels. */
    MirrorFigure onlyOnPanels() {
        return new MirrorFigure(key, name, unit, most, figure, with, cut -> cut.has(CutTrait.PANELS));
    }

    /** Of the one mirror of a dish. */
    Parameter ofDish() {
        return Parameter.number(
                        key,
                        name,
                        unit,
                        0,
                        most,
                        s -> figure.applyAsDouble(s.mirror()),
                        (s, x) -> s.withMirror(with.apply(s.mirror(), x)))
                .onlyIf(s -> meansSomething.test(s.dish().cut()));
    }

    /** Of the mirror of one zone. */
    Parameter ofZone(Zone zone) {
        String named = zone.name();
        return Parameter.number(
                        Flaw.key(key, named),
                        name + ", zone " + named,
                        unit,
                        0,
                        most,
                        s -> figure.applyAsDouble(s.mirror(named)),
                        (s, x) -> s.withMirror(named, mirror -> with.apply(mirror, x)))
                .onlyIf(s -> meansSomething.test(s.dish().zone(named).plan().cut()));
    }
}

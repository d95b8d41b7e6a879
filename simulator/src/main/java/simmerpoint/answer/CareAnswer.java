package simmerpoint.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.TraceResult;

/** Cautions: the same sentences in every answer, by the hottest light it tells of. */
public final class CareAnswer {
    /** Heading of every section of cautions. */
    public static final String HEADING = "Take care";

    /** Heading of every section on errors and what the figures came from. */
    public static final String HOW_SURE = "How sure this is";

    /** A flux, kW/m², above which the words stay the same. */
    private static final double BEYOND_ALL = 200;

    private static final Set<Item> GENERAL = general();

    private CareAnswer() {}

    /** The cautions for a hottest spot of {@code fluxWattsPerSquareMetre} on a "pan" or "disc". */
    static List<Item> items(double fluxWattsPerSquareMetre, String targetWord) {
        return CautionWords.sentences(fluxWattsPerSquareMetre, targetWord).stream()
                .map(text -> (Item) new Item.Caution(text))
                .toList();
    }

    /**
     * Whether {@code item} is one of the cautions that every answer has, at whatever flux: an answer to many questions
     * says them once, by the hottest light.
     */
    public static boolean isGeneral(Item item) {
        return GENERAL.contains(item);
    }

    private static Set<Item> general() {
        Set<Item> all = new HashSet<>();
        for (double kilowatts = 0; kilowatts < BEYOND_ALL; kilowatts += 0.1) {
            all.addAll(items(1000 * kilowatts, "pan"));
            all.addAll(items(1000 * kilowatts, "disc"));
        }
        return all;
    }

    /** One section of cautions for answers that stand together: by the hottest light of all of them. */
    public static Section of(TraceResult trace, Optional<PanResult> pan, Optional<DayResult> day) {
        double hottest = MaximumFlux.of(trace);
        hottest = Math.max(hottest, pan.map(PanAnswer::hottest).orElse(0.0));
        hottest = Math.max(hottest, day.map(DayAnswer::hottest).orElse(0.0));
        String noun = TargetWords.of(trace.scenario().target()).noun();
        List<Item> items = new ArrayList<>(items(hottest, noun));
        if (pan.isPresent()) {
            items.add(PanAnswer.moving());
        }
        return new Section(HEADING, items);
    }
}

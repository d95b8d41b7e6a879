package simmerpoint.quantities;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import simmerpoint.trial.ClassResult;
import simmerpoint.trial.fit.TrialFlaw;
import simmerpoint.trial.power.PowerTest;

/** What {@code trial} finds of a folder of logs: a row for each cooker, the best first. */
public final class ClassQuantities {
    private static final List<String> FLAWS = Stream.concat(
                    Stream.of("none"), Stream.of(TrialFlaw.values()).map(TrialFlaw::key))
            .toList();

    private static final Fields<ClassResult.Cooker> COOKER = Fields.<ClassResult.Cooker>none()
            .whole("rank", "from 1, the best; 0 without a figure", ClassResult.Cooker::rank)
            .text("cooker", "name of its log or folder", ClassResult.Cooker::name)
            .optionalEstimate(
                    "cooking_power_W", "at 50 K above the air, by the light of basis", ClassResult.Cooker::watts)
            .optionalNumber("half_width_W", "of its 95 % interval", ClassResult.Cooker::halfWidth)
            .optionalNumber(
                    "measured_boil_s",
                    "from the first row",
                    c -> c.trial().boil().map(b -> b.measuredSeconds()).orElse(OptionalDouble.empty()))
            .text(
                    "likeliest_flaw",
                    "or none",
                    FLAWS,
                    c -> c.flaw().map(f -> f.flaw().key()).orElse("none"));

    private static final Fields<Map.Entry<String, String>> LEFT_OUT = Fields.<Map.Entry<String, String>>none()
            .text("cooker", "name of its log or folder", Map.Entry::getKey)
            .text("why", "what is wrong with its logs", Map.Entry::getValue);

    private static final Fields<ClassResult> ALL = Fields.<ClassResult>none()
            .word("basis", "light that powers are standardised by", PowerTest.Basis.class, ClassResult::basis)
            .rows("cookers", "the best first", ClassResult::cookers, COOKER)
            .rows(
                    "left_out",
                    "cookers whose logs cannot be used",
                    r -> List.copyOf(r.leftOut().entrySet()),
                    LEFT_OUT);

    /** JSON and CSV. */
    public static final Document<ClassResult> DOCUMENT = new Document<>(
            "class",
            result -> result.scenario().scenario().title(),
            ClassResult::seed,
            ALL,
            new Table<>(COOKER, result -> result.cookers().stream()));

    private ClassQuantities() {}
}

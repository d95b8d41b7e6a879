package simmerpoint.answer.trace;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Section;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/** The answer to "what does this dish give my pan?": first what a cook asks, then the optics. */
public final class TraceAnswer {
    private TraceAnswer() {}

    /** The answer for {@code result}, in the units of {@code system}. */
    public static Answer of(TraceResult result, UnitSystem system) {
        return of(result, system, " The command pan tells where it boils and where it simmers.");
    }

    /** The same in a dozen lines. */
    public static Answer brief(TraceResult result, UnitSystem system) {
        return new ShortTrace(
                        result,
                        new FigureFormat(system),
                        TargetWords.of(result.scenario().target()))
                .answer();
    }

    /** The same for a reader who has the answer about the pan's place beside it, not a command line. */
    public static Answer withoutHint(TraceResult result, UnitSystem system) {
        return of(result, system, "");
    }

    private static Answer of(TraceResult result, UnitSystem system, String hint) {
        FigureFormat figures = new FigureFormat(system);
        TargetWords words = TargetWords.of(result.scenario().target());
        List<Section> sections = new ArrayList<>();
        sections.add(new CookSection(result, figures, words, hint).section());
        sections.add(Cautions.section(MaximumFlux.of(result), words.noun()));
        sections.add(new LedgerSection(result, figures, words, true).section());
        sections.add(new SpotSection(result, figures, words).section());
        result.plate().ifPresent(plate -> sections.add(new PlateSection(plate, figures, words).section()));
        sections.add(CertaintySection.of(result, figures, words));
        return new Answer(OneLine.of(result.scenario().title()), sections);
    }
}

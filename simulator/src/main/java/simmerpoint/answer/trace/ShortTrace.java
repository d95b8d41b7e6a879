package simmerpoint.answer.trace;

import java.util.Optional;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.answer.scenario.AimWords;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.answer.words.HeightWords;
import simmerpoint.answer.words.NextCommand;
import simmerpoint.answer.words.ShellWords;
import simmerpoint.answer.words.ShortAnswer;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.TraceResult;

/**
 * What a builder asks first, in a dozen lines.
 *
 * @param result what was traced
 * @param figures in the reader's units
 * @param words for what the light falls on
 */
record ShortTrace(TraceResult result, FigureFormat figures, TargetWords words) {
    Answer answer() {
        CookSection cook = new CookSection(result, figures, words, "");
        SectionBuilder out = Section.headed(verdict(cook));
        if (cook.hasLight()) {
            out.sayIf(words.isPan(), ShortAnswer.capital(cook.power()) + ".")
                    .say(heat().flatMap(HeatSentences::inDoubt));
        }
        out.figure("focus", ShellWords.of(result.scenario(), figures).map(ShellWords::strings));
        out.figure(words.noun() + " stands", place()).figure("aim again", aim()).figure("largest loss", loss());
        if (cook.hasLight()) {
            out.figure("hot spot", cook.hotSpot());
        }
        return ShortAnswer.of(
                result.scenario().title(), out, MaximumFlux.of(result), Cautions.at(words.noun()), next());
    }

    private String verdict(CookSection cook) {
        if (!cook.hasLight()) {
            return cook.dark();
        }
        return heat().map(heat -> ShortAnswer.capital(heat.amount() + " " + heat.outcome()))
                .orElseGet(() -> ShortAnswer.capital(cook.power()));
    }

    private Optional<HeatSentences> heat() {
        return result.heat().map(heat -> new HeatSentences(heat, result.likely(), figures.system()));
    }

    private String place() {
        Scenario scenario = result.scenario();
        String where = new AimWords(scenario.aim(), scenario.stand(), words, figures).place();
        if (!words.isPan()) {
            return where;
        }
        double height = scenario.panHeightMetres();
        return where + ", " + figures.length(height, 2) + " above the ground"
                + new HeightWords(scenario.heights(), figures)
                        .beyond(height)
                        .map(beyond -> ": " + beyond)
                        .orElse("")
                + result.betterHeight()
                        .map(better -> "; " + HeightWords.better(better, figures))
                        .orElse("");
    }

    private Optional<String> aim() {
        return result.aimAgainMinutes()
                .map(minutes -> "every " + SkyWords.minutes(minutes.value()) + ", or lose a tenth");
    }

    private String loss() {
        return LargestLoss.of(result).figure(figures);
    }

    private String next() {
        return words.isPan()
                ? NextCommand.line(NextCommand.PAN, NextCommand.AIM, NextCommand.BUDGET)
                : NextCommand.line(NextCommand.AIM, NextCommand.BUDGET);
    }
}

package simmerpoint.answer.budget;

import simmerpoint.answer.Item;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.MoveWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Parameter;
import simmerpoint.study.budget.ParameterStep;
import simmerpoint.study.budget.Sensitivity;
import simmerpoint.study.budget.Significance;
import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.units.UnitSystem;

/**
 * What one step of a parameter changes, in words.
 *
 * @param figures in the reader's units
 * @param result whose parameters
 */
record SensitivityWords(FigureFormat figures, BudgetResult result) {
    /** "slope error": "−4.3 ± 0.1 W per mrad". */
    Item item(Sensitivity s) {
        return new Item.Figure(s.parameter().name(), text(s));
    }

    private String text(Sensitivity s) {
        String step = step(s.parameter());
        if (result.isNothing(s.telling())) {
            return step + either(s) + " changes next to nothing (" + watts(s.telling()) + ")";
        }
        if (!Significance.of(s.telling())) {
            return step + either(s) + " changes nothing that this many rays can tell (" + watts(s.telling()) + ")";
        }
        if (s.slope().isEmpty()) {
            return s.steps().size() == 1 ? oneWay(s) : worst(s, step);
        }
        if (s.bends()) {
            Estimate bend = s.bend().orElseThrow();
            String verb = bend.value() < 0 ? " costs " : " brings ";
            return "\u00b1" + step + verb + size(bend.abs()) + bent(s, bend);
        }
        return watts(s.slope()
                        .orElseThrow()
                        .times(round(s.parameter()) / s.parameter().step())) + " per "
                + length(s.parameter(), round(s.parameter()), step) + " " + more(s.parameter());
    }

    private static String either(Sensitivity s) {
        return s.steps().size() == 2 ? " either way" : s.steps().size() == 1 ? "" : " in any direction";
    }

    /** What a loss either way means: the best place if nothing pulls to one side, else near it. */
    private static String bent(Sensitivity s, Estimate bend) {
        if (bend.value() > 0) {
            return " either way";
        }
        return Significance.of(s.slope().orElseThrow())
                ? ", a little more one way than the other: it is near its best"
                : " either way: it is at its best";
    }

    private String oneWay(Sensitivity s) {
        Sensitivity.Step only = s.steps().get(0);
        double round = round(s.parameter());
        return watts(only.change().times(round / s.parameter().step())) + " for the first "
                + length(s.parameter(), round, step(s.parameter())) + " "
                + (only.way().equals(ParameterStep.MORE) ? "more" : "less");
    }

    private String worst(Sensitivity s, String step) {
        Sensitivity.Step worst = s.worst();
        return watts(worst.change()) + " for " + step + " in the worst direction, "
                + direction(s.parameter(), worst.way());
    }

    private static String direction(Parameter parameter, String way) {
        boolean turn = parameter.key().equals("turn");
        String words = way.replace("up right", "up and to the right")
                .replace("up left", "up and to the left")
                .replace("down right", "down and to the right")
                .replace("down left", "down and to the left");
        if (way.equals("right") || way.equals("left")) {
            words = "to the " + way;
        }
        return (turn ? "the dish turned " : "the sun gone ") + words;
    }

    private static String more(Parameter parameter) {
        for (Move move : Move.values()) {
            if (move.key().equals(parameter.key())) {
                return "(" + MoveWords.positive(move) + ")";
            }
        }
        return "more";
    }

    private String step(Parameter parameter) {
        return switch (parameter.unit()) {
            case MILLIRADIAN -> "1" + FigureFormat.NBSP + "mrad";
            case PERCENT -> "1" + FigureFormat.NBSP + "%";
            case DEGREE -> FigureFormat.fixed(Math.toDegrees(parameter.step()), 1) + "\u00b0";
            case CENTIMETRE -> length(parameter, "1" + FigureFormat.NBSP + "cm");
            case MILLIMETRE -> length(parameter, "1" + FigureFormat.NBSP + "mm");
        };
    }

    private String length(Parameter parameter, String metric) {
        return length(parameter, parameter.step(), metric);
    }

    private String length(Parameter parameter, double metres, String metric) {
        return figures.system() == UnitSystem.INCH && isLength(parameter) ? figures.length(metres, 2) : metric;
    }

    private static boolean isLength(Parameter parameter) {
        return parameter.unit() == Parameter.Unit.CENTIMETRE || parameter.unit() == Parameter.Unit.MILLIMETRE;
    }

    /** A step of a round length for whoever measures in inches: half an inch, a sixteenth of a gap. */
    private double round(Parameter parameter) {
        if (figures.system() == UnitSystem.METRIC || !isLength(parameter)) {
            return parameter.step();
        }
        double parts = parameter.unit() == Parameter.Unit.CENTIMETRE ? 2 : 16;
        return UnitSystem.INCH.shortUnitMetres() / parts;
    }

    private String watts(Estimate e) {
        return (e.value() > 0 ? "+" : "") + size(e);
    }

    private String size(Estimate e) {
        return figures.wattsOf(result.perfect().value(), e);
    }
}

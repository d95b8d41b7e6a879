package simmerpoint.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import simmerpoint.scenario.keys.NearestWord;
import simmerpoint.scenario.values.FileNames;

/** Says in one sentence what is wrong with the arguments. */
final class ArgumentComplaints {
    private static final Pattern ONE_OF =
            Pattern.compile("expected one of \\[(.*)\\] \\(case-insensitive\\) but was '(.*)'");

    private final Complaints complaints;

    ArgumentComplaints(Complaints complaints) {
        this.complaints = complaints;
    }

    /** About arguments that make no sense. */
    int about(ParameterException e, String[] args) {
        String help = e.getCommandLine().getCommandSpec().qualifiedName() + " --help";
        return complaints.about(sentence(e) + " (" + help + " tells more)", Complaints.WRONG);
    }

    private static String sentence(ParameterException e) {
        if (e instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched);
        }
        if (e instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " is given twice";
        }
        if (e instanceof MissingParameterException missing) {
            ArgSpec what = missing.getMissing().get(0);
            return what.isOption()
                    ? name(what) + " needs a value: " + name(what) + " " + what.paramLabel()
                    : "a scenario file is missing";
        }
        // The library keeps no cause here, only its words.
        if (String.valueOf(e.getMessage()).contains(InvalidPathException.class.getSimpleName())) {
            return FileNames.refusal();
        }
        return e.getArgSpec() != null && e.getArgSpec().isOption() ? value(e) : unpunctuated(e.getMessage());
    }

    private static String unpunctuated(String message) {
        String plain = message == null ? "wrong arguments" : message.replaceAll("\\.$", "");
        return plain.substring(0, 1).toLowerCase(Locale.ROOT) + plain.substring(1);
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }

    /** The sentence of our own converter behind the library's words, or of the library itself. */
    private static String value(ParameterException e) {
        String message =
                e.getCause() instanceof CommandLine.TypeConversionException own ? own.getMessage() : e.getMessage();
        int colon = message.indexOf("': ");
        String rest = message.startsWith("Invalid value") && colon > 0 ? message.substring(colon + 3) : message;
        return name(e.getArgSpec()) + ": " + word(rest);
    }

    /** The library's words about one of several words, in ours. */
    private static String word(String message) {
        Matcher matcher = ONE_OF.matcher(message);
        return matcher.matches()
                ? matcher.group(2) + " is not known here; allowed are "
                        + matcher.group(1).toLowerCase(Locale.ROOT)
                : message;
    }

    private static String unmatched(UnmatchedArgumentException e) {
        String what = e.getUnmatched().get(0);
        CommandLine command = e.getCommandLine();
        if (e.isUnknownOption()) {
            return unknownOption(what.replaceAll("=.*", ""), command);
        }
        if (command.getParent() != null) {
            return "one argument too many: " + what;
        }
        if (what.isBlank()) {
            return RootCommand.missing(command);
        }
        if (isFile(what)) {
            return "there is no command " + what + "; to trace that file: simmerpoint trace " + what;
        }
        return "there is no command " + what
                + hint(what, command.getSubcommands().keySet());
    }

    private static String unknownOption(String option, CommandLine command) {
        for (CommandLine sub : command.getSubcommands().values()) {
            if (sub.getCommandSpec().optionsMap().containsKey(option)) {
                return option + " goes after a command: simmerpoint " + sub.getCommandName() + " " + option;
            }
        }
        return "there is no option " + option
                + hint(option, command.getCommandSpec().optionsMap().keySet());
    }

    private static String hint(String word, Collection<String> known) {
        return NearestWord.of(word, known)
                .map(near -> "; did you mean " + near + "?")
                .orElse("");
    }

    private static boolean isFile(String text) {
        try {
            return Files.exists(Path.of(text)) || text.endsWith(".yaml") || text.endsWith(".yml");
        } catch (InvalidPathException e) {
            return false;
        }
    }
}

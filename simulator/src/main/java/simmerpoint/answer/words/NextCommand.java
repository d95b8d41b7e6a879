package simmerpoint.answer.words;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What to ask next: a command and what it tells, as the last line of a short answer. */
public enum NextCommand {
    /** Light and heat. */
    TRACE("trace", "what the pan gets"),
    /** Places of the pan. */
    PAN("pan", "where it boils and simmers"),
    /** Through the day. */
    DAY("day", "when it cooks"),
    /** Aiming. */
    AIM("aim", "how to follow the sun"),
    /** Flaws. */
    BUDGET("budget", "what each flaw costs"),
    /** Several designs. */
    COMPARE("compare", "other dishes beside it"),
    /** The search. */
    DESIGN("design", "which dish to build"),
    /** Building. */
    CUT("cut", "what to cut"),
    /** What the light can burn. */
    SAFETY("safety", "what it can burn, and how far away"),
    /** Logs. */
    TRIAL("trial", "how good a built one is");

    private final String command;
    private final String tells;

    NextCommand(String command, String tells) {
        this.command = command;
        this.tells = tells;
    }

    /** Its name on the command line. */
    public String command() {
        return command;
    }

    /** "Next: pan (where it boils and simmers), aim (how to follow the sun), and so on. More: --full." */
    public static String line(NextCommand... next) {
        String commands = Arrays.stream(next)
                .map(each -> each.command + " (" + each.tells + ")")
                .collect(Collectors.joining(", "));
        return (commands.isEmpty() ? "" : "Next: " + commands + ". ") + "More: --full.";
    }
}

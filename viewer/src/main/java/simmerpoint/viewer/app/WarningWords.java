package simmerpoint.viewer.app;

import java.util.List;
import java.util.stream.Collectors;
import simmerpoint.scenario.keys.Keys;

/** What a check finds odd, as sentences for somebody who sees no keys. */
final class WarningWords {
    private WarningWords() {}

    static String of(List<String> warnings) {
        return warnings.stream().map(WarningWords::sentence).collect(Collectors.joining(" "));
    }

    private static String sentence(String warning) {
        int colon = warning.indexOf(": ");
        boolean keyed = colon > 0 && Keys.find(warning.substring(0, colon)).isPresent();
        String words = keyed ? warning.substring(colon + 2) : warning;
        String sentence =
                capital(keyed && !hasSubject(words) ? label(warning.substring(0, colon)) + ": " + words : words);
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    /** Whether it is said what the words are about. */
    private static boolean hasSubject(String words) {
        return Character.isLetter(words.charAt(0)) && !words.startsWith("not given");
    }

    /** "pan, finish" for pan.finish. */
    private static String label(String key) {
        return key.replace(".", ", ").replace('-', ' ');
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}

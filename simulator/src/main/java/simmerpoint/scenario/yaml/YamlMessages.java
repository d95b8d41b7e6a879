package simmerpoint.scenario.yaml;

/** What the YAML parser complains about, in a builder's words. */
final class YamlMessages {
    private YamlMessages() {}

    /** Whether the parser stumbles only where something should have been ended that began earlier. */
    static boolean isUnfinished(String problem, String context) {
        String said = problem == null ? "" : problem;
        String where = context == null ? "" : context;
        return said.contains("could not find expected ':'")
                || where.contains("quoted scalar")
                || where.contains("flow mapping")
                || where.contains("flow sequence");
    }

    static String plain(String problem, String context) {
        String said = problem == null ? "" : problem;
        String where = context == null ? "" : context;
        if (said.contains("\\t") || said.contains("TAB")) {
            return "there is a tab here; use spaces";
        }
        if (said.contains("mapping values are not allowed")) {
            return "there is a colon here where none is expected; check the indentation and put text with a colon in quotes";
        }
        if (where.contains("quoted scalar")) {
            return "a quotation mark is opened and not closed";
        }
        if (where.contains("flow mapping") || where.contains("flow sequence")) {
            return "a bracket is opened and not closed, or a comma is missing";
        }
        if (said.contains("undeclared alias")) {
            return "YAML aliases (*name) are not used in a scenario; write the value out";
        }
        if (said.contains("could not find expected ':'")) {
            return "a colon is missing after the key";
        }
        if (where.contains("block mapping") || said.contains("block end")) {
            return "this line is not indented like the lines before it";
        }
        if (said.contains("cannot start any token")) {
            return "this value begins with a character that is special in YAML; put the value in quotes";
        }
        return "this cannot be read as YAML; check colons, indentation and quotes";
    }
}

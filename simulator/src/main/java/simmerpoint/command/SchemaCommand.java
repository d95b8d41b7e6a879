package simmerpoint.command;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import simmerpoint.quantities.Document;
import simmerpoint.quantities.Documents;

/** Prints the JSON Schema of what a command writes, always in UTF-8. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Print the JSON Schema of what --json of a command writes: simmerpoint schema trace",
        footer = {"", "simmerpoint schema year is that of day --year."})
final class SchemaCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(arity = "1", paramLabel = "COMMAND", description = "The command, for instance trace.")
    private String command;

    SchemaCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws WrongUse {
        byte[] bytes = document().schema().getBytes(StandardCharsets.UTF_8);
        terminal.out().write(bytes, 0, bytes.length);
        return 0;
    }

    private Document<?> document() throws WrongUse {
        return Documents.ALL.stream()
                .filter(each -> each.command().equals(command))
                .findFirst()
                .orElseThrow(() -> new WrongUse("there is no schema of " + command + ", only of "
                        + Documents.ALL.stream().map(Document::command).collect(Collectors.joining(", ")) + "."));
    }
}

package simmerpoint.command;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import simmerpoint.scenario.file.ExampleScenario;

/** Prints the scenario to start from, as it would stand in a file: always in UTF-8. */
@Command(
        name = "example",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Print a commented scenario to start from: simmerpoint example > mine.yaml")
final class ExampleCommand implements Callable<Integer> {
    private final Terminal terminal;

    ExampleCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        byte[] bytes = ExampleScenario.text().getBytes(StandardCharsets.UTF_8);
        terminal.out().write(bytes, 0, bytes.length);
        return 0;
    }
}

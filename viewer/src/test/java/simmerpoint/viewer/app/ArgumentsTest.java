package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.theme.Theme;

class ArgumentsTest {
    @Test
    void nothingOpensTheExampleAsUsual() throws InvalidArgumentsException {
        Arguments none = Arguments.parse(List.of());
        assertTrue(none.scenario().isEmpty()
                && none.shot().isEmpty()
                && none.size().isEmpty());
        assertEquals(Optional.empty(), none.theme());
        assertEquals(Optional.empty(), none.units());
        assertFalse(none.keep());
        assertEquals(Map.of(), none.changes());
        assertFalse(none.help());
    }

    @Test
    void everythingCanBeSaidInBothWays() throws InvalidArgumentsException {
        Arguments all = Arguments.parse(List.of(
                "--shot",
                "a.png",
                "--scenario=b.yaml",
                "--size",
                "1024x700",
                "--theme=dark",
                "--units",
                "inch",
                "--drawer",
                "--keep",
                "--log=monday.csv",
                "--log",
                "tuesday.csv",
                "--change",
                "stand.pull-back= 8 cm",
                "--change=mirror.material=household mirror"));
        assertEquals(Optional.of(Path.of("a.png")), all.shot());
        assertEquals(Optional.of(Path.of("b.yaml")), all.scenario());
        assertEquals(Optional.of(new Arguments.Size(1024, 700)), all.size());
        assertEquals(Optional.of(Theme.DARK), all.theme());
        assertEquals(Optional.of(UnitSystem.INCH), all.units());
        assertTrue(all.keep());
        assertEquals(Map.of("stand.pull-back", "8 cm", "mirror.material", "household mirror"), all.changes());
        assertEquals(List.of(Path.of("monday.csv"), Path.of("tuesday.csv")), all.logs());
        assertTrue(all.drawer());
        assertEquals(
                Optional.of(Path.of("c.yaml")),
                Arguments.parse(List.of("c.yaml")).scenario());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--colour red | there is no option --colour",
                "--theme red | \"red\" is not a theme: light or dark",
                "--units feet | metric or inch",
                "--size 1023x700 | from 1024x700",
                "--size 99999x9999 | to 7680x4320",
                "--size big | 1280x800",
                "--shot | --shot wants a value",
                "--change dish.hub | is not KEY=VALUE",
                "--change stand.pulback=1cm | Did you mean stand.pull-back?",
                "--keep=no | --keep takes no value",
                "--drawer=yes | --drawer takes no value",
                "a.yaml b.yaml | only one scenario"
            })
    void whatCannotBeFollowedIsSaidInOneSentence(String line, String words) {
        InvalidArgumentsException wrong =
                assertThrows(InvalidArgumentsException.class, () -> Arguments.parse(List.of(line.split(" "))));
        assertTrue(wrong.getMessage().contains(words.strip()), wrong.getMessage());
        assertFalse(wrong.getMessage().contains("\n"));
    }
}

package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ArgumentSuggestionTest {
    @Test
    void slipsAreCounted() {
        assertEquals(0, ArgumentSuggestion.slips("rays", "rays"));
        assertEquals(1, ArgumentSuggestion.slips("ryas", "rays"));
        assertEquals(1, ArgumentSuggestion.slips("ray", "rays"));
        assertEquals(3, ArgumentSuggestion.slips("kitten", "sitting"));
        assertEquals(4, ArgumentSuggestion.slips("", "rays"));
    }

    @Test
    void farWordsAreNotGuessed() {
        List<String> known = List.of("trace", "check", "example");
        assertEquals(Optional.of("trace"), ArgumentSuggestion.to("trce", known));
        assertEquals(Optional.empty(), ArgumentSuggestion.to("banana", known));
    }
}

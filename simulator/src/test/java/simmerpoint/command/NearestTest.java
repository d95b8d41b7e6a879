package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearestTest {
    @Test
    void slipsAreCounted() {
        assertEquals(0, Nearest.slips("rays", "rays"));
        assertEquals(1, Nearest.slips("ryas", "rays"));
        assertEquals(1, Nearest.slips("ray", "rays"));
        assertEquals(3, Nearest.slips("kitten", "sitting"));
        assertEquals(4, Nearest.slips("", "rays"));
    }

    @Test
    void farWordsAreNotGuessed() {
        List<String> known = List.of("trace", "check", "example");
        assertEquals(Optional.of("trace"), Nearest.to("trce", known));
        assertEquals(Optional.empty(), Nearest.to("banana", known));
    }
}

package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoubleClickTest {
    @ParameterizedTest
    @CsvSource({
        "Linux, /usr/bin/java, xterm, false",
        "Linux, /usr/bin/java, , true",
        "Mac OS X, /usr/bin/java, xterm-256color, false",
        "Mac OS X, /usr/bin/java, , true",
        "Windows 11, C:/jdk/bin/java.exe, , false",
        "Windows 11, C:/jdk/bin/javaw.exe, , true",
    })
    void aDoubleClickIsToldFromATerminal(String system, String java, String term, boolean expected) {
        assertEquals(expected, DoubleClick.startedFromDesktop(system, java, term));
    }
}

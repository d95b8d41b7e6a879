package simmerpoint.quantities;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The version of the program, as the build writes it into a resource. */
public final class Version {
    private Version() {}

    /** For instance "0.1.0"; "unknown" if the build left it out. */
    public static String text() {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            String text = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
            return text.isEmpty() || text.contains("$") ? "unknown" : text;
        } catch (IOException e) {
            return "unknown";
        }
    }
}

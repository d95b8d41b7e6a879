package simmerpoint.viewer.document;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Function;

/** The system's folder for configuration files of the user. */
public final class ConfigFolder {
    private static final String NAME = "simmerpoint";

    private ConfigFolder() {}

    /** The folder of this user; it may not be there yet. */
    public static Path usual() {
        return of(System.getProperty("os.name", ""), System.getProperty("user.home", ""), System::getenv);
    }

    /** The folder on a system of that name, for a user with that home and those environment variables. */
    static Path of(String system, String home, Function<String, String> environment) {
        String os = system.toLowerCase(Locale.ROOT);
        if (os.contains("win") && !os.contains("darwin")) {
            String roaming = environment.apply("APPDATA");
            return roaming == null ? Path.of(home, NAME) : Path.of(roaming, NAME);
        }
        if (os.contains("mac")) {
            return Path.of(home, "Library", "Application Support", NAME);
        }
        String config = environment.apply("XDG_CONFIG_HOME");
        boolean usable = config != null && Path.of(config).isAbsolute();
        return usable ? Path.of(config, NAME) : Path.of(home, ".config", NAME);
    }
}

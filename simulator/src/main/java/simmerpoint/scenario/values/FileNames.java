package simmerpoint.scenario.values;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Names of files as they are typed in a scenario: they count from its own folder. */
public final class FileNames {
    private FileNames() {}

    /** How a scenario in that folder names a file: from the folder on if both have a root in common. */
    public static String from(Path folder, Path file) {
        Path home = folder.toAbsolutePath().normalize();
        Path whole = file.toAbsolutePath().normalize();
        boolean related = home.getRoot() != null && home.getRoot().equals(whole.getRoot());
        return (related ? home.relativize(whole) : whole).toString().replace('\\', '/');
    }

    /** What a file named in one folder is called from another; a name that is none, or no relative one, stays. */
    static String moved(String name, Path before, Path after) {
        try {
            boolean whole = Path.of(name).isAbsolute();
            return whole ? name : from(after, before.toAbsolutePath().resolve(name));
        } catch (InvalidPathException e) {
            return name;
        }
    }

    /** What to say of a name that this machine takes for no file's name; one sentence without its full stop. */
    public static String refusal() {
        return "this name holds letters that cannot stand in a file name under the system's language setting (LANG); rename"
                + " the file with plain letters a to z, or set LANG to one with UTF-8";
    }
}

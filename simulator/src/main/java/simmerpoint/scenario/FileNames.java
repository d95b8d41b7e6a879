package simmerpoint.scenario;

/** What to say of a name that this machine takes for no file's name. */
public final class FileNames {
    private FileNames() {}

    /** One sentence without its full stop. */
    public static String refusal() {
        return "this name holds letters that cannot stand in a file name under the system's language setting (LANG); rename"
                + " the file with plain letters a to z, or set LANG to one with UTF-8";
    }
}

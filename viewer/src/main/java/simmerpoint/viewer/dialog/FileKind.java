package simmerpoint.viewer.dialog;

import simmerpoint.report.ResultFiles;

/**
 * A kind of file.
 *
 * @param name what it is, for instance "Picture"
 * @param extension without a dot, for instance "png"
 */
public record FileKind(String name, String extension) {
    /** A scenario. */
    public static final FileKind SCENARIO = new FileKind("Scenario", "yaml");

    /** A picture. */
    public static final FileKind PICTURE = new FileKind("Picture", "png");

    /** A table. */
    public static final FileKind TABLE = new FileKind("Table", "csv");

    /** A log of water heated in the cooker. */
    public static final FileKind LOG = new FileKind("Log", "csv");

    /** Figures for other programs. */
    public static final FileKind FIGURES = new FileKind("Figures", "json");

    /** A page to read and to print. */
    public static final FileKind PAGE = new FileKind("Page", "html");

    /** What goes into a picture, a table or a file of figures. */
    public byte[] bytes(ResultFiles files) {
        return (equals(PICTURE) ? files.png() : equals(TABLE) ? files.csv() : files.json()).get();
    }
}

package simmerpoint.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The text of a table that somebody wrote: a plain file of at most so many bytes, in UTF-8. */
public final class TableText {
    private TableText() {}

    /**
     * A row of a table.
     *
     * @param line where it stands, counted from 1
     * @param text without comment and white space around it, not empty
     */
    public record Row(int line, String text) {}

    /**
     * The rows of a file in which whatever follows a # is a comment. Cells come parted by commas, decimals with a point, also where a
     * spreadsheet parted the cells by semicolons or tabs and wrote decimals with a comma: the first two rows tell.
     */
    public static List<Row> rows(Path file, int mostMegabytes) throws InputFileException {
        String[] lines = read(file, mostMegabytes).split("\r\n|\r|\n", -1);
        List<Row> rows = new ArrayList<>();
        for (int k = 0; k < lines.length; k++) {
            String text = lines[k].replaceFirst("#.*", "").strip();
            if (!text.isEmpty()) {
                rows.add(new Row(k + 1, text));
            }
        }
        separator(rows)
                .ifPresent(mark -> rows.replaceAll(
                        row -> new Row(row.line(), row.text().replace(',', '.').replace(mark, ","))));
        return rows;
    }

    /** What parts the cells, where it is not a comma. */
    private static Optional<String> separator(List<Row> rows) {
        if (rows.size() < 2 || rows.get(0).text().contains(",")) {
            return Optional.empty();
        }
        return Stream.of(";", "\t")
                .filter(mark ->
                        rows.subList(0, 2).stream().allMatch(row -> row.text().contains(mark)))
                .findFirst();
    }

    /**
     * All of a file, without the mark that some programs put before a text.
     *
     * @param mostMegabytes largest file, MB
     */
    public static String read(Path file, int mostMegabytes) throws InputFileException {
        if (Files.isDirectory(file)) {
            throw new InputFileException(file, "this is a folder; a CSV file is allowed.");
        }
        if (!Files.exists(file)) {
            throw new InputFileException(file, "there is no such file.");
        }
        if (!Files.isRegularFile(file)) {
            throw new InputFileException(file, "this is not a plain file; a CSV file is allowed.");
        }
        int most = mostMegabytes * 1_000_000;
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) {
                throw new InputFileException(
                        file,
                        "the file is larger than " + mostMegabytes + " MB; at most " + mostMegabytes
                                + " MB is allowed.");
            }
            String text = new String(bytes, StandardCharsets.UTF_8);
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (IOException e) {
            throw new InputFileException(file, e);
        }
    }
}

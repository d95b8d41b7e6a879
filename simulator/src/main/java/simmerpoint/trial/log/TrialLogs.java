package simmerpoint.trial.log;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import simmerpoint.input.InputFileException;

/** Finds and reads the logs of one cooker or of a class. */
public final class TrialLogs {
    private static final String ENDING = ".csv";
    private static final int MOST_COOKERS = 200;

    private TrialLogs() {}

    /**
     * Logs of one cooker.
     *
     * @throws InputFileException if one cannot be used
     */
    public static List<TrialLog> read(List<Path> files) throws InputFileException {
        List<TrialLog> read = new ArrayList<>();
        for (Path file : files) {
            read.add(LogReader.read(file));
        }
        return read;
    }

    /**
     * Logs of a class: every CSV file of a folder is a cooker, and every folder in it that holds some. A cooker with a log that cannot be
     * used is left out.
     *
     * @throws InputFileException if there is none, or none can be used
     */
    public static ClassLogs ofClass(Path folder) throws InputFileException {
        Map<String, List<TrialLog>> cookers = new LinkedHashMap<>();
        Map<String, String> leftOut = new LinkedHashMap<>();
        InputFileException first = null;
        for (Path entry : entries(folder)) {
            List<Path> files = Files.isDirectory(entry)
                    ? entries(entry).stream().filter(TrialLogs::isLog).toList()
                    : List.of(entry);
            if (!files.isEmpty() && isLog(files.get(0))) {
                try {
                    cookers.put(name(entry), read(files));
                } catch (InputFileException e) {
                    first = first == null ? e : first;
                    leftOut.put(name(entry), e.getMessage());
                }
            }
        }
        if (cookers.isEmpty()) {
            throw first != null
                    ? first
                    : new InputFileException(folder, "no log in this folder; logs are called something.csv.");
        }
        if (cookers.size() > MOST_COOKERS) {
            throw new InputFileException(folder, cookers.size() + " cookers; at most " + MOST_COOKERS + " at once.");
        }
        return new ClassLogs(cookers, leftOut);
    }

    private static List<Path> entries(Path folder) throws InputFileException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        } catch (IOException e) {
            throw new InputFileException(folder, "the folder cannot be read.");
        }
    }

    private static boolean isLog(Path file) {
        return Files.isRegularFile(file)
                && file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ENDING);
    }

    private static String name(Path entry) {
        String name = entry.getFileName().toString();
        return isLog(entry) ? name.substring(0, name.length() - ENDING.length()) : name;
    }
}

package simmerpoint.scenario.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ScenarioException;

/** The text of a scenario file, or the sentence why it cannot be had. Never reads more than 1 MB. */
final class FileText {
    private static final int MOST_BYTES = 1_000_000;

    private FileText() {}

    static String read(Path file) throws ScenarioException {
        String name = file.toString();
        if (name.isBlank()) {
            throw refused("scenario", 0, "no file named");
        }
        if (!Files.exists(file)) {
            throw refused(name, 0, "there is no such file");
        }
        if (Files.isDirectory(file)) {
            throw refused(name, 0, "this is a folder; a scenario file is needed");
        }
        if (!Files.isRegularFile(file)) {
            throw refused(name, 0, "this is a pipe or a device, not a file; to read from a pipe name the scenario -");
        }
        try {
            refuseTooLarge(name, Files.size(file));
            try (InputStream stream = Files.newInputStream(file)) {
                return read(name, stream);
            }
        } catch (IOException e) {
            throw refused(name, 0, "the file cannot be read; check that you may open it");
        }
    }

    /** All that comes out of a stream, which messages call by that name. */
    static String read(String name, InputStream stream) throws ScenarioException {
        try {
            byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
            refuseTooLarge(name, bytes.length);
            return decode(name, bytes);
        } catch (IOException e) {
            throw refused(name, 0, "it cannot be read");
        }
    }

    private static void refuseTooLarge(String name, long bytes) throws ScenarioException {
        if (bytes > MOST_BYTES) {
            throw refused(name, 0, tooLarge(bytes > MOST_BYTES + 1 ? bytes : 0));
        }
    }

    private static String tooLarge(long bytes) {
        String size =
                bytes > 0 ? "the file is " + Math.round(bytes / 1e6 * 10) / 10.0 + " MB" : "the file is over 1 MB";
        return size + "; a scenario is a few kilobytes, and files over 1 MB are not read";
    }

    /** Refuses text that was handed over without a file. */
    static void refuseTooLong(String name, String text) throws ScenarioException {
        if (text.length() > MOST_BYTES) {
            throw refused(name, 0, "the text is over 1 MB; a scenario is a few kilobytes");
        }
    }

    private static String decode(String name, byte[] bytes) throws ScenarioException {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            throw refused(name, lineAt(bytes, in.position()), "this is not UTF-8 text; save the file as UTF-8");
        }
        return out.flip().toString();
    }

    private static int lineAt(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }

    private static ScenarioException refused(String name, int line, String text) {
        return new ScenarioException(name, List.of(new Problem(line, "", text)));
    }
}

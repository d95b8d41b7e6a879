package simmerpoint.dish.mesh;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import simmerpoint.input.InputFileException;

/**
 * The lines of a mesh file, one after another: without comments, with lines that end in a backslash joined to the next.
 * A comment is never continued. Holds one line in memory at a time.
 */
final class ObjLines implements Closeable {
    /** Largest file, bytes. */
    static final long MOST_BYTES = 200_000_000;

    /** Longest line, bytes, continuations included. */
    static final int LONGEST_LINE = 1_000_000;

    private final Path file;
    private final InputStream in;
    private final byte[] buffer = new byte[1 << 16];
    private int next;
    private int filled;
    private long read;
    private boolean afterReturn;
    private byte[] line = new byte[256];
    private int length;
    private int lineNumber;
    private int linesRead;

    private ObjLines(Path file, InputStream in) {
        this.file = file;
        this.in = in;
    }

    /** Opens the file, or says why not. */
    static ObjLines open(Path file) throws InputFileException {
        if (Files.isDirectory(file)) {
            throw new InputFileException(file, "this is a folder; a Wavefront OBJ file is allowed.");
        }
        if (!Files.exists(file)) {
            throw new InputFileException(file, "there is no such file.");
        }
        if (!Files.isRegularFile(file)) {
            throw new InputFileException(file, "this is not a plain file; a Wavefront OBJ file is allowed.");
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw tooLarge(file);
            }
            return new ObjLines(file, Files.newInputStream(file));
        } catch (IOException e) {
            throw new InputFileException(file, e);
        }
    }

    /** The next line that is not empty, or null at the end of the file. */
    String next() throws InputFileException {
        try {
            while (fill()) {
                String text = new String(line, 0, length, StandardCharsets.UTF_8).strip();
                if (!text.isEmpty()) {
                    return text;
                }
            }
            return null;
        } catch (IOException e) {
            throw new InputFileException(file, e);
        }
    }

    /** Number of the line that {@link #next} gave, from 1; the first of those that were joined. */
    int lineNumber() {
        return lineNumber;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    /** Gathers one logical line; false at the end of the file. */
    private boolean fill() throws IOException, InputFileException {
        length = 0;
        lineNumber = linesRead + 1;
        boolean comment = false;
        int c = read();
        if (c < 0) {
            return false;
        }
        for (; c >= 0; c = read()) {
            if (c == '\n') {
                linesRead++;
                if (comment || !dropBackslash()) {
                    return true;
                }
                append(' ');
            } else if (c == '#') {
                comment = true;
            } else if (!comment) {
                append(c);
            }
        }
        linesRead++;
        return true;
    }

    /** Takes a backslash off the end of the line; false if there is none. */
    private boolean dropBackslash() {
        if (length > 0 && line[length - 1] == '\\') {
            length--;
            return true;
        }
        return false;
    }

    private void append(int c) throws InputFileException {
        if (length == LONGEST_LINE) {
            throw new InputFileException(
                    file, lineNumber, "the line is longer than 1,000,000 characters, which is what is allowed.");
        }
        if (length == line.length) {
            line = Arrays.copyOf(line, 2 * length);
        }
        line[length++] = (byte) c;
    }

    /** The next byte, or −1; all three ways to end a line come out as one newline. */
    private int read() throws IOException, InputFileException {
        int c = readByte();
        if (c == '\n' && afterReturn) {
            c = readByte();
        }
        afterReturn = c == '\r';
        return afterReturn ? '\n' : c;
    }

    private int readByte() throws IOException, InputFileException {
        if (next == filled) {
            filled = Math.max(0, in.read(buffer));
            next = 0;
            read += filled;
            if (read > MOST_BYTES) {
                throw tooLarge(file);
            }
            if (filled == 0) {
                return -1;
            }
        }
        return buffer[next++] & 0xff;
    }

    private static InputFileException tooLarge(Path file) {
        return new InputFileException(file, "the file is larger than 200 MB; at most 200 MB is allowed.");
    }
}

package gripwright.intake;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * How far an open file was read, in bytes and lines, and whether what was read is still there.
 *
 * <p>Bytes are given out in pieces that end with a whole line; what comes after the last line end is the tail.
 */
final class FollowedBytes {

    private static final int WINDOW = 2048;
    private static final int MOST_AT_ONCE = 32 << 20;

    private final SourceDisk.OpenFile file;
    private long consumed;
    private int line = 1;
    private byte[] first = new byte[0];
    private byte[] last = new byte[0];
    private byte[] tail = new byte[0];
    private Charset twoBytes;

    FollowedBytes(SourceDisk.OpenFile file) {
        this.file = file;
    }

    /** The line, from 1, that the next piece begins on. */
    int line() {
        return line;
    }

    byte[] tail() {
        return tail;
    }

    boolean isAtBeginning() {
        return consumed == 0;
    }

    /** Whether the file is shorter than what was read of it, or holds other bytes there. */
    boolean isRewritten() throws IOException {
        return file.size() < consumed || !Arrays.equals(file.read(0, first.length), first)
                || !Arrays.equals(file.read(consumed - last.length, last.length), last);
    }

    /** Forgets what was read: the next piece is the file's beginning. */
    void restart() {
        consumed = 0;
        line = 1;
        first = new byte[0];
        last = new byte[0];
        tail = new byte[0];
        twoBytes = null;
    }

    /** The lines that are whole since the last piece; null where there are none. The tail is renewed. */
    byte[] nextPiece(boolean evenInsideQuotes) throws IOException {
        byte[] bytes = file.read(consumed, MOST_AT_ONCE);
        if (consumed == 0) {
            twoBytes = startsWith(bytes, 0xFF, 0xFE) ? StandardCharsets.UTF_16LE
                    : startsWith(bytes, 0xFE, 0xFF) ? StandardCharsets.UTF_16BE : null;
        }
        boolean bigEndian = StandardCharsets.UTF_16BE.equals(twoBytes);
        int end = LineEnds.lastEnd(bytes, twoBytes == null ? 1 : 2, bigEndian, evenInsideQuotes);
        tail = Arrays.copyOfRange(bytes, end, bytes.length);
        return end == 0 ? null : Arrays.copyOf(bytes, end);
    }

    private static boolean startsWith(byte[] bytes, int one, int two) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == one && (bytes[1] & 0xFF) == two;
    }

    /** Counts a piece as read. */
    void consume(byte[] piece, String text) {
        if (first.length < WINDOW) {
            first = joined(first, piece, WINDOW);
        }
        byte[] end = piece.length >= WINDOW ? piece : joined(last, piece, Integer.MAX_VALUE);
        last = Arrays.copyOfRange(end, Math.max(0, end.length - WINDOW), end.length);
        consumed += piece.length;
        line += LineEnds.count(text);
    }

    private static byte[] joined(byte[] one, byte[] other, int most) {
        byte[] joined = Arrays.copyOf(one, (int) Math.min(most, (long) one.length + other.length));
        System.arraycopy(other, 0, joined, one.length, joined.length - one.length);
        return joined;
    }

    /** The characters of a piece or tail. */
    String text(byte[] piece) {
        if (twoBytes == null) {
            return DecodedText.of(piece).text();
        }
        String text = new String(piece, twoBytes);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** The characters from the beginning of the file up to the end of this piece. */
    String wholeText(byte[] piece) throws IOException {
        return DecodedText.of(joined(file.read(0, (int) consumed), piece, Integer.MAX_VALUE)).text();
    }

    String encodingName() {
        return twoBytes == null ? "UTF-8" : "UTF-16";
    }

    void close() throws IOException {
        file.close();
    }

    long size() throws IOException {
        return file.size();
    }

    Object identity() {
        return file.identity();
    }
}

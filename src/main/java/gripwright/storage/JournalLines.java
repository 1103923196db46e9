package gripwright.storage;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;

/**
 * The framing of a journal: one record a line, each with its length and a checksum, so that a torn or damaged one is
 * found out and the others still count.
 *
 * <p>A line is eight hexadecimal digits of length in bytes, a space, eight digits of CRC-32, a space, the record, a line
 * feed. A record holds no line feed.
 */
final class JournalLines {

    private static final int DIGITS = 8;
    private static final int HEAD = 2 * DIGITS + 2;

    private JournalLines() {
    }

    /**
     * What was read.
     *
     * @param records intact records in order
     * @param gaps before which of them, by index, something unreadable stood
     * @param tornTail whether the last line was not finished, as a crash in the middle of writing leaves it
     */
    record Lines(List<byte[]> records, List<Integer> gaps, boolean tornTail) {
    }

    /** A record as a line. */
    static byte[] frame(byte[] record) {
        byte[] head = String.format("%08x %08x ", record.length, checksum(record))
                .getBytes(StandardCharsets.US_ASCII);
        byte[] line = Arrays.copyOf(head, HEAD + record.length + 1);
        System.arraycopy(record, 0, line, HEAD, record.length);
        line[line.length - 1] = '\n';
        return line;
    }

    /** All intact records of a journal's bytes; never fails, whatever the bytes are. */
    static Lines read(byte[] bytes) {
        List<byte[]> records = new ArrayList<>();
        List<Integer> gaps = new ArrayList<>();
        int start = 0;
        while (start < bytes.length) {
            int end = start;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            if (end == bytes.length) {
                return new Lines(records, gaps, true);
            }
            byte[] record = unframe(bytes, start, end);
            if (record != null) {
                records.add(record);
            } else if (!gaps.contains(records.size())) {
                gaps.add(records.size());
            }
            start = end + 1;
        }
        return new Lines(records, gaps, false);
    }

    private static byte[] unframe(byte[] bytes, int start, int end) {
        if (end - start < HEAD || bytes[start + DIGITS] != ' ' || bytes[start + HEAD - 1] != ' ') {
            return null;
        }
        byte[] record = Arrays.copyOfRange(bytes, start + HEAD, end);
        String head = new String(bytes, start, HEAD, StandardCharsets.US_ASCII);
        return head.equals(String.format("%08x %08x ", record.length, checksum(record))) ? record : null;
    }

    private static long checksum(byte[] record) {
        CRC32 crc = new CRC32();
        crc.update(record);
        return crc.getValue();
    }
}

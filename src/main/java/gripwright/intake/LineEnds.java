package gripwright.intake;

/** Finds where the last whole line ends in a piece of a file, in encodings of one and of two bytes. */
final class LineEnds {

    private LineEnds() {
    }

    /**
     * The number of bytes up to and with the last line end; 0 where there is none. A line end inside a quoted cell that is
     * still open does not count, and neither does a carriage return at the very end, which may be half of a pair.
     *
     * @param bytes the piece, which begins at a line's beginning
     * @param width bytes of a character: 1, or 2 for UTF-16
     * @param bigEndian the order of the two bytes
     * @param evenInsideQuotes whether line ends inside open quotes count as well
     */
    static int lastEnd(byte[] bytes, int width, boolean bigEndian, boolean evenInsideQuotes) {
        int last = 0;
        boolean inQuotes = false;
        for (int i = 0; i + width <= bytes.length; i += width) {
            int c = character(bytes, i, width, bigEndian);
            if (c == '"') {
                inQuotes = !inQuotes;
            }
            boolean pairToCome = c == '\r' && (i + 2 * width > bytes.length
                    || character(bytes, i + width, width, bigEndian) == '\n');
            if ((c == '\n' || c == '\r' && !pairToCome) && (!inQuotes || evenInsideQuotes)) {
                last = i + width;
            }
        }
        return last;
    }

    private static int character(byte[] bytes, int at, int width, boolean bigEndian) {
        if (width == 1) {
            return bytes[at] & 0xFF;
        }
        int high = bytes[bigEndian ? at : at + 1] & 0xFF;
        int low = bytes[bigEndian ? at + 1 : at] & 0xFF;
        return high << 8 | low;
    }

    /** How many lines end in a text; a carriage return with a line feed ends one. */
    static int count(String text) {
        int count = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                count++;
            }
        }
        return count;
    }
}

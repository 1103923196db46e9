package gripwright.intake;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * The text of a file with the encoding it was read in: UTF-8 or UTF-16 by their byte order marks, else UTF-8 where the
 * bytes are valid UTF-8, else Windows-1252.
 *
 * <p>Text in any eight-bit encoding that is not UTF-8 is almost never valid UTF-8 by accident, so the order of trying
 * decides. Windows-1252 gives every byte a character, so decoding never fails.
 *
 * @param text the characters, byte order mark removed
 * @param charset the encoding
 * @param markLength how many bytes the byte order mark took
 */
record DecodedText(String text, Charset charset, int markLength) {

    static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    static DecodedText of(byte[] bytes) {
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return decoded(bytes, 3, StandardCharsets.UTF_8);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return decoded(bytes, 2, StandardCharsets.UTF_16BE);
        }
        try {
            String text = StandardCharsets.UTF_8.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes)).toString();
            return new DecodedText(text, StandardCharsets.UTF_8, 0);
        } catch (CharacterCodingException notUtf8) {
            return decoded(bytes, 0, WINDOWS_1252);
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int at = 0; at < mark.length; at++) {
            if ((bytes[at] & 0xFF) != mark[at]) {
                return false;
            }
        }
        return true;
    }

    private static DecodedText decoded(byte[] bytes, int from, Charset charset) {
        return new DecodedText(new String(bytes, from, bytes.length - from, charset), charset, from);
    }

    /** Whether this can be text at all: a NUL character is in no text file. */
    boolean isText() {
        return text.indexOf('\0') < 0;
    }

    /** The encoding as people call it. */
    String encodingName() {
        if (charset.equals(WINDOWS_1252)) {
            return "Windows-1252";
        }
        return charset.name().startsWith("UTF-16") ? "UTF-16" : "UTF-8";
    }
}

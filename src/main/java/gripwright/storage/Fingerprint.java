package gripwright.storage;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Tells whether a file's content is still the same. */
final class Fingerprint {

    /** What a file that is not there has. */
    static final String ABSENT = "";

    private Fingerprint() {
    }

    /** SHA-256 of the bytes in hexadecimal digits. */
    static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256.", e);
        }
    }
}

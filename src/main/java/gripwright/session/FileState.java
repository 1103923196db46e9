package gripwright.session;

import java.nio.file.Path;
import java.util.Objects;

/**
 * A session's file and what was in it when this window last read or wrote it.
 *
 * @param path the file
 * @param fingerprint a digest of its content then; empty where there was no file yet
 */
public record FileState(Path path, String fingerprint) {

    public FileState {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(fingerprint, "fingerprint");
    }

    /** A file that is not there yet. */
    public static FileState absent(Path path) {
        return new FileState(path, "");
    }

    /** The file's name alone, for people. */
    public String name() {
        return String.valueOf(path.getFileName());
    }
}

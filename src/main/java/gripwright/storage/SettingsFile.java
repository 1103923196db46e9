package gripwright.storage;

import gripwright.model.ProblemException;
import gripwright.model.ShopSettings;
import java.nio.file.Path;
import java.util.List;

/** Reads and writes what the shop set once. */
public final class SettingsFile {

    /** The format that is written. */
    public static final int FORMAT_VERSION = 1;

    private final DocumentFile<ShopSettings> file;

    public SettingsFile() {
        this(new LocalDisk());
    }

    SettingsFile(DiskOperations disk) {
        this.file = new DocumentFile<>(
                new VersionedFormat<>("settings", FORMAT_VERSION, ShopSettings.class, List.of()), disk);
    }

    /**
     * The shop's settings, or the usual ones where there is no file yet.
     *
     * @throws ProblemException with a sentence; the file is untouched
     */
    public Loaded<ShopSettings> read(Path path) throws ProblemException {
        return file.readOr(path, ShopSettings.usual());
    }

    /** Writes them in one step; on failure the old file stands. */
    public void write(Path path, ShopSettings settings) throws ProblemException {
        file.write(path, settings);
    }
}

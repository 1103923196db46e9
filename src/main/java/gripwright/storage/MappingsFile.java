package gripwright.storage;

import gripwright.model.ProblemException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads and writes the shop's saved column mappings, by the name the shop gave each.
 *
 * <p>What is in a mapping is the intake's affair: here it is a tree of maps, lists, texts, numbers and truth values.
 */
public final class MappingsFile {

    /** The format that is written. */
    public static final int FORMAT_VERSION = 1;

    /** What the file holds. */
    record Mappings(Map<String, Object> byName) {
    }

    private final DocumentFile<Mappings> file;

    public MappingsFile() {
        this(new LocalDisk());
    }

    MappingsFile(DiskOperations disk) {
        this.file = new DocumentFile<>(
                new VersionedFormat<>("mappings", FORMAT_VERSION, Mappings.class, List.of()), disk);
    }

    /**
     * Mappings by name in the order they were written; empty where there is no file yet.
     *
     * @throws ProblemException with a sentence; the file is untouched
     */
    public Loaded<Map<String, Object>> read(Path path) throws ProblemException {
        Loaded<Mappings> loaded = file.readOr(path, new Mappings(Map.of()));
        return new Loaded<>(Collections.unmodifiableMap(new LinkedHashMap<>(loaded.value().byName())),
                loaded.problems());
    }

    /**
     * Writes them in one step; on failure the old file stands.
     *
     * @throws IllegalArgumentException when a tree holds something other than maps, lists, texts, finite numbers,
     *     truth values and null
     */
    public void write(Path path, Map<String, Object> byName) throws ProblemException {
        JsonText.check(byName);
        file.write(path, new Mappings(byName));
    }
}

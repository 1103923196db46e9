package gripwright.storage;

import gripwright.model.ProblemException;
import java.io.IOException;
import java.nio.file.Path;

/**
 * One versioned document in one file, written in one step.
 *
 * @param <T> what it holds
 */
final class DocumentFile<T> {

    private final VersionedFormat<T> format;
    private final DiskOperations disk;

    DocumentFile(VersionedFormat<T> format, DiskOperations disk) {
        this.format = format;
        this.disk = disk;
    }

    Loaded<T> read(Path path) throws ProblemException {
        try {
            return format.read(disk.read(path), String.valueOf(path.getFileName()));
        } catch (IOException e) {
            throw DiskProblem.reading(path, e);
        }
    }

    /** What the file holds, or the given value where there is no file yet. */
    Loaded<T> readOr(Path path, T missing) throws ProblemException {
        return disk.exists(path) ? read(path) : new Loaded<>(missing, java.util.List.of());
    }

    void write(Path path, T value) throws ProblemException {
        try {
            disk.createFolders(path.toAbsolutePath().getParent());
            new AtomicFile(disk).write(path, format.write(value));
        } catch (IOException e) {
            throw DiskProblem.writing(path, e);
        }
    }
}

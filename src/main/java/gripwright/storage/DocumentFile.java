package gripwright.storage;

import gripwright.model.ProblemException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

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
        return disk.exists(path) ? read(path) : new Loaded<>(missing, List.of());
    }

    void write(Path path, T value) throws ProblemException {
        try {
            disk.createFolders(path.toAbsolutePath().getParent());
            Path target = AtomicFile.behindLinks(path.toAbsolutePath());
            keepStrange(target);
            new AtomicFile(disk).write(target, format.write(value));
        } catch (IOException e) {
            throw DiskProblem.writing(path, e);
        }
    }

    /** What this program can't read, damaged or of a newer version, is put beside before its name is taken. */
    private void keepStrange(Path path) throws IOException {
        if (!disk.exists(path)) {
            return;
        }
        try {
            format.read(disk.read(path), "");
        } catch (ProblemException e) {
            disk.rename(path, Asides.free(disk, path, "replaced " + LocalDate.now(ZoneId.systemDefault())));
        }
    }
}

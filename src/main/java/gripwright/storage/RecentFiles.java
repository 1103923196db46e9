package gripwright.storage;

import gripwright.model.ProblemException;
import gripwright.session.RecentSessions;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Remembers which session files were open last, newest first. */
public final class RecentFiles implements RecentSessions {

    /** The format that is written. */
    public static final int FORMAT_VERSION = 1;

    private static final int MOST = 12;

    /** What the file holds. */
    record Recent(List<String> files) {
    }

    private final DocumentFile<Recent> file;
    private final Path path;

    public RecentFiles(Path path) {
        this(path, new LocalDisk());
    }

    RecentFiles(Path path, DiskOperations disk) {
        this.path = path;
        this.file = new DocumentFile<>(new VersionedFormat<>("recent", FORMAT_VERSION, Recent.class, List.of()), disk);
    }

    /**
     * The files, newest first; empty where none was remembered yet.
     *
     * @throws ProblemException with a sentence when the list is damaged
     */
    @Override
    public List<Path> read() throws ProblemException {
        List<Path> files = new ArrayList<>();
        for (String name : file.readOr(path, new Recent(List.of())).value().files()) {
            parse(name).ifPresent(files::add);
        }
        return List.copyOf(files);
    }

    /** Puts a file first; a damaged list begins anew, since it only saves a search. */
    @Override
    public void remember(Path opened) throws ProblemException {
        List<String> names = new ArrayList<>();
        names.add(opened.toAbsolutePath().normalize().toString());
        for (Path known : readOrNone()) {
            if (!names.contains(known.toString()) && names.size() < MOST) {
                names.add(known.toString());
            }
        }
        file.write(path, new Recent(names));
    }

    private List<Path> readOrNone() {
        try {
            return read();
        } catch (ProblemException e) {
            return List.of();
        }
    }

    private static Optional<Path> parse(String name) {
        try {
            return Optional.of(Path.of(name));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}

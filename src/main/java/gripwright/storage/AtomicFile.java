package gripwright.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;

/** Writes a whole file so that at any moment, even at a power cut, either the old or the new one is there. */
final class AtomicFile {

    /** Ending of files that are not finished; a crash may leave one behind. */
    static final String UNFINISHED = ".tmp";

    /** A last look before the new file takes the old one's place. */
    interface LastLook {

        /** Throws where the file must not be replaced after all. */
        void look() throws IOException;
    }

    private final DiskOperations disk;

    AtomicFile(DiskOperations disk) {
        this.disk = disk;
    }

    void write(Path file, byte[] content) throws IOException {
        write(file, content, () -> { });
    }

    /** The folder must be there. Temporary file beside it, forced, last look, renamed, folder forced; on failure the old file stands. */
    void write(Path file, byte[] content, LastLook lastLook) throws IOException {
        Path target = behindLinks(file.toAbsolutePath());
        Path folder = target.getParent();
        Path unfinished = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + UNFINISHED);
        try {
            try (DiskOperations.OpenFile open = disk.create(unfinished)) {
                open.append(content);
                open.force();
            }
            disk.likePermissions(unfinished, target);
            lastLook.look();
            disk.rename(unfinished, target);
        } catch (IOException | RuntimeException e) {
            sweep(unfinished, e);
            throw e;
        }
        disk.forceFolder(folder);
    }

    /** Whether this is what a crash left of writing that file. */
    static boolean isUnfinished(Path beside, Path file) {
        String name = String.valueOf(beside.getFileName());
        return name.startsWith("." + file.getFileName() + ".") && name.endsWith(UNFINISHED);
    }

    private void sweep(Path unfinished, Exception reason) {
        try {
            disk.delete(unfinished);
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }

    /** A name that is a link keeps being one: the file behind it is replaced. */
    static Path behindLinks(Path file) throws IOException {
        return Files.isSymbolicLink(file) && Files.exists(file) ? file.toRealPath() : file;
    }
}

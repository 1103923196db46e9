package gripwright.storage;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/**
 * What storage asks of a disk, so narrow that the tests can let each step of it fail.
 *
 * <p>Every method may throw: the disk is full, the folder can't be written, the share is gone.
 */
public interface DiskOperations {

    /** A file being written. */
    interface OpenFile extends Closeable {

        /** Writes all of these bytes at the end. */
        void append(byte[] bytes) throws IOException;

        /** Returns once everything appended so far is on the disk itself. */
        void force() throws IOException;

        /** Everything in it, read without opening it once more, which could lift the mark. */
        byte[] read() throws IOException;

        /**
         * Marks the file as in use until it is closed or the process ends.
         *
         * @return whether nobody else, in this process or another, has marked it
         */
        boolean claim() throws IOException;
    }

    /** Everything in a file. */
    byte[] read(Path file) throws IOException;

    /** A new file that only its owner may read, where the system can; fails where there is one already. */
    OpenFile create(Path file) throws IOException;

    /** An existing file, to append to or to mark. */
    OpenFile open(Path file) throws IOException;

    /** Puts one file in the other's place in one step, seen by everybody either before or after. */
    void rename(Path from, Path to) throws IOException;

    /** Returns once the names in this folder are on the disk itself; does nothing where the system can't. */
    void forceFolder(Path folder) throws IOException;

    /** Gives a new file the permissions of the one it will replace, others than owner and group left out. */
    void likePermissions(Path file, Path model) throws IOException;

    /** Makes a folder and those above it, for the owner alone where the system can. */
    void createFolders(Path folder) throws IOException;

    /** Deletes a file if there is one. */
    void delete(Path file) throws IOException;

    /** Whether there is a file or folder of that name. */
    boolean exists(Path file);

    /** The files in a folder, sorted by name; empty where there is no folder. */
    List<Path> list(Path folder) throws IOException;

    /** When a file was last written. */
    Instant lastModified(Path file) throws IOException;
}

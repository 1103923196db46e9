package gripwright.storage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The disk as the operating system gives it. */
public final class LocalDisk implements DiskOperations {

    private static final Set<PosixFilePermission> FILE_OF_OWNER = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> FOLDER_OF_OWNER = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> OWNER_AND_GROUP = PosixFilePermissions.fromString("rwxrwx---");

    @Override
    public byte[] read(Path file) throws IOException {
        return Files.readAllBytes(file);
    }

    @Override
    public OpenFile create(Path file) throws IOException {
        return new Channel(FileChannel.open(file,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.READ),
                ownerOnly(file, FILE_OF_OWNER)));
    }

    @Override
    public OpenFile open(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.READ);
        channel.position(channel.size());
        return new Channel(channel);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            // Such a system has no better: the file is complete and forced, only the exchange is two steps.
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows opens no folders and needs no forcing of them; elsewhere the rename itself stands.
            if (!Files.isDirectory(folder)) {
                throw e;
            }
        }
    }

    @Override
    public void likePermissions(Path file, Path model) throws IOException {
        if (isPosix(file) && Files.exists(model)) {
            Set<PosixFilePermission> permissions = EnumSet.copyOf(FILE_OF_OWNER);
            Files.getPosixFilePermissions(model).stream().filter(OWNER_AND_GROUP::contains)
                    .forEach(permissions::add);
            Files.setPosixFilePermissions(file, permissions);
        }
    }

    @Override
    public void createFolders(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder, ownerOnly(folder, FOLDER_OF_OWNER));
        }
    }

    @Override
    public void delete(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public boolean exists(Path file) {
        return Files.exists(file);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Override
    public Instant lastModified(Path file) throws IOException {
        return Files.getLastModifiedTime(file).toInstant();
    }

    private static FileAttribute<?>[] ownerOnly(Path path, Set<PosixFilePermission> permissions) {
        return isPosix(path)
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(permissions)}
                : new FileAttribute<?>[0];
    }

    private static boolean isPosix(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    /** A file being written through a channel. */
    private record Channel(FileChannel channel) implements OpenFile {

        /** Far past any content, since on some systems a marked stretch can't be read by others. */
        private static final long MARK_POSITION = Long.MAX_VALUE - 1;

        @Override
        public void append(byte[] bytes) throws IOException {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
        }

        @Override
        public void force() throws IOException {
            channel.force(true);
        }

        @Override
        public byte[] read() throws IOException {
            ByteBuffer buffer = ByteBuffer.allocate(Math.toIntExact(channel.size()));
            while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) >= 0) {
                continue;
            }
            return Arrays.copyOf(buffer.array(), buffer.position());
        }

        @Override
        public boolean claim() throws IOException {
            try {
                return channel.tryLock(MARK_POSITION, 1, false) != null;
            } catch (OverlappingFileLockException e) {
                return false;
            }
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}

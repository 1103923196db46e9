package gripwright.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The real disk with chosen steps failing, below chosen folders, until they are cured. */
final class FailingDisk implements DiskOperations {

    /** What can fail. */
    enum Step {
        READ,
        CREATE,
        APPEND,
        /** Half of the bytes are written before it fails. */
        APPEND_HALF,
        FORCE,
        RENAME,
        FORCE_FOLDER,
        DELETE,
        LIST,
        MARK
    }

    private record Fault(Step step, Path below, String message) {
    }

    private final DiskOperations disk = new LocalDisk();
    private final Set<Fault> faults = ConcurrentHashMap.newKeySet();
    private final Set<Path> vanished = ConcurrentHashMap.newKeySet();

    /** Lets a step fail for everything below a folder. */
    FailingDisk fail(Step step, Path below, String message) {
        faults.add(new Fault(step, below, message));
        return this;
    }

    /** Lets writing of any kind fail below a folder. */
    FailingDisk failWriting(Path below, String message) {
        EnumSet.of(Step.CREATE, Step.APPEND, Step.RENAME).forEach(step -> fail(step, below, message));
        return this;
    }

    /** Lets a folder be gone: nothing is there and nothing can be done. */
    FailingDisk vanish(Path folder) {
        vanished.add(folder);
        return this;
    }

    /** Everything works again. */
    void cure() {
        faults.clear();
        vanished.clear();
    }

    private void check(Step step, Path path) throws IOException {
        gone(path);
        for (Fault fault : faults) {
            if (fault.step() == step && path.startsWith(fault.below())) {
                throw new IOException(fault.message());
            }
        }
    }

    private void gone(Path path) throws IOException {
        if (vanished.stream().anyMatch(path::startsWith)) {
            throw new IOException("Host is down");
        }
    }

    @Override
    public byte[] read(Path file) throws IOException {
        check(Step.READ, file);
        return disk.read(file);
    }

    @Override
    public OpenFile create(Path file) throws IOException {
        check(Step.CREATE, file);
        return new Open(disk.create(file), file);
    }

    @Override
    public OpenFile open(Path file) throws IOException {
        gone(file);
        return new Open(disk.open(file), file);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        check(Step.RENAME, to);
        disk.rename(from, to);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        check(Step.FORCE_FOLDER, folder);
        disk.forceFolder(folder);
    }

    @Override
    public void likePermissions(Path file, Path model) throws IOException {
        gone(file);
        disk.likePermissions(file, model);
    }

    @Override
    public void createFolders(Path folder) throws IOException {
        gone(folder);
        disk.createFolders(folder);
    }

    @Override
    public void delete(Path file) throws IOException {
        check(Step.DELETE, file);
        disk.delete(file);
    }

    @Override
    public boolean exists(Path file) {
        return vanished.stream().noneMatch(file::startsWith) && disk.exists(file);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        check(Step.LIST, folder);
        return disk.list(folder);
    }

    @Override
    public Instant lastModified(Path file) throws IOException {
        gone(file);
        return disk.lastModified(file);
    }

    private final class Open implements OpenFile {

        private final OpenFile file;
        private final Path path;

        Open(OpenFile file, Path path) {
            this.file = file;
            this.path = path;
        }

        @Override
        public void append(byte[] bytes) throws IOException {
            check(Step.APPEND, path);
            try {
                check(Step.APPEND_HALF, path);
            } catch (IOException e) {
                file.append(java.util.Arrays.copyOf(bytes, bytes.length / 2));
                throw e;
            }
            file.append(bytes);
        }

        @Override
        public void force() throws IOException {
            check(Step.FORCE, path);
            file.force();
        }

        @Override
        public byte[] read() throws IOException {
            check(Step.READ, path);
            return file.read();
        }

        @Override
        public boolean claim() throws IOException {
            check(Step.MARK, path);
            return file.claim();
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}

package gripwright.intake;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/** Where watched files are read from; a seam for disks that lock, fail and vanish. */
interface SourceDisk {

    /**
     * How the file at a path is now.
     *
     * @throws java.nio.file.NoSuchFileException where there is none
     */
    Stamp stamp(Path path) throws IOException;

    /**
     * What tells a file from another one that takes its place, and from itself after a change.
     *
     * @param identity the same as long as it is the same file
     * @param modified when it was last changed
     */
    record Stamp(Object identity, FileTime modified) {
    }

    /**
     * Opens the file at a path; what is opened stays the same file even where another takes its place.
     *
     * @throws java.nio.file.NoSuchFileException where there is none
     */
    OpenFile open(Path path) throws IOException;

    /** A file held open for reading. */
    interface OpenFile extends Closeable {

        /** The identity it had when it was opened. */
        Object identity();

        long size() throws IOException;

        /** The bytes from a place on, at most {@code most}; fewer where the file ends. */
        byte[] read(long from, int most) throws IOException;
    }

    /** The computer's own disks and mounted folders. */
    static SourceDisk local() {
        return new SourceDisk() {
            @Override
            public Stamp stamp(Path path) throws IOException {
                BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
                Object key = attributes.fileKey() != null ? attributes.fileKey() : attributes.creationTime();
                return new Stamp(key, attributes.lastModifiedTime());
            }

            @Override
            public OpenFile open(Path path) throws IOException {
                Object identity = stamp(path).identity();
                return new ChannelFile(FileChannel.open(path, StandardOpenOption.READ), identity);
            }
        };
    }

    /**
     * A file read through a channel.
     *
     * @param channel the channel
     * @param identity identity of the file when it was opened
     */
    record ChannelFile(FileChannel channel, Object identity) implements OpenFile {

        @Override
        public long size() throws IOException {
            return channel.size();
        }

        @Override
        public byte[] read(long from, int most) throws IOException {
            int length = (int) Math.max(0, Math.min(most, channel.size() - from));
            ByteBuffer buffer = ByteBuffer.allocate(length);
            long at = from;
            while (buffer.hasRemaining()) {
                int count = channel.read(buffer, at);
                if (count < 0) {
                    break;
                }
                at += count;
            }
            return java.util.Arrays.copyOf(buffer.array(), buffer.position());
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}

package gripwright.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Keeps a few earlier versions of each session file on this computer: the last five, at least ten minutes apart, and the
 * last one of each of the ten days before.
 */
final class EarlierVersions {

    static final int LAST = 5;
    static final int DAYS = 10;
    static final Duration APART = Duration.ofMinutes(10);

    private static final String ENDING = ".json";
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH.mm.ss'Z'").withZone(ZoneId.of("UTC"));

    private final DiskOperations disk;
    private final Path folder;
    private final Clock clock;

    EarlierVersions(DiskOperations disk, Path folder, Clock clock) {
        this.disk = disk;
        this.folder = folder;
        this.clock = clock;
    }

    /** The versions of a file, oldest first. */
    List<Path> of(Path file) throws IOException {
        return disk.list(place(file)).stream().filter(version -> when(version) != null).toList();
    }

    /**
     * Keeps this content as an earlier version, unless the newest one is younger than ten minutes.
     *
     * @param always whether it is kept however young the newest one is, as the content found at opening is
     */
    void keep(Path file, byte[] content, boolean always) throws IOException {
        List<Path> versions = new ArrayList<>(of(file));
        Instant now = clock.instant();
        boolean young = !versions.isEmpty()
                && Duration.between(when(versions.get(versions.size() - 1)), now).compareTo(APART) < 0;
        if (young && !always) {
            return;
        }
        Path version = place(file).resolve(STAMP.format(now) + ENDING);
        if (!disk.exists(version)) {
            disk.createFolders(version.getParent());
            new AtomicFile(disk).write(version, content);
            versions.add(version);
        }
        for (Path old : superfluous(versions)) {
            disk.delete(old);
        }
    }

    private static List<Path> superfluous(List<Path> versions) {
        List<Path> superfluous = new ArrayList<>();
        Set<String> days = new HashSet<>();
        int newest = versions.size() - LAST;
        for (int index = versions.size() - 1; index >= 0; index--) {
            String day = versions.get(index).getFileName().toString().substring(0, "uuuu-MM-dd".length());
            boolean lastOfDay = days.add(day) && days.size() <= DAYS + 1;
            if (index < newest && !lastOfDay) {
                superfluous.add(versions.get(index));
            }
        }
        return superfluous;
    }

    /** One folder for each session file, named so that it can be found and two of the same name don't meet. */
    private Path place(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        String name = String.valueOf(whole.getFileName());
        String digest = Fingerprint.of(whole.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return folder.resolve(name + " " + digest.substring(0, 8));
    }

    private static Instant when(Path version) {
        String name = version.getFileName().toString();
        if (!name.endsWith(ENDING)) {
            return null;
        }
        try {
            return STAMP.parse(name.substring(0, name.length() - ENDING.length()), Instant::from);
        } catch (DateTimeParseException e) {
            return null;
        }
    }
}

package gripwright.storage;

import java.nio.file.Path;

/** Names beside a file for what must not be lost: 'visit (conflict BAY-2 2026-03-31 10.15.00).json'. */
final class Asides {

    private Asides() {
    }

    /** A name that is free, made of the file's name and a reason. */
    static Path free(DiskOperations disk, Path file, String reason) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String ending = dot > 0 ? name.substring(dot) : "";
        Path path = file.resolveSibling(stem + " (" + reason + ")" + ending);
        for (int number = 2; disk.exists(path); number++) {
            path = file.resolveSibling(stem + " (" + reason + " " + number + ")" + ending);
        }
        return path;
    }
}

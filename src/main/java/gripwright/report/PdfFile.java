package gripwright.report;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.UUID;

/**
 * Writes pages into a PDF file in one step, in place of an earlier PDF at most: a session or a folder whose name was
 * given by mistake stays what it is.
 */
public final class PdfFile {

    private static final byte[] BEGINNING = "%PDF".getBytes(StandardCharsets.US_ASCII);

    private PdfFile() {
    }

    /**
     * Writes the file.
     *
     * @return the file
     * @throws IllegalArgumentException with a sentence, if the folder is missing or something other than a PDF is there
     * @throws IOException if the disk refuses; what was there stands
     */
    public static Path write(byte[] pdf, Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IllegalArgumentException("There is no folder " + folder + " to write the PDF into; make it first.");
        }
        if (Files.isDirectory(file)) {
            throw new IllegalArgumentException(file + " is a folder; give the PDF a name of its own in it.");
        }
        if (Files.exists(file) && !isPdf(file)) {
            throw new IllegalArgumentException(file + " is there already and is no PDF, so it was not replaced; choose "
                    + "another name.");
        }
        // A temporary file of the system's would be readable for its owner alone, and so would the PDF be.
        Path unfinished = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".tmp");
        try {
            Files.write(unfinished, pdf, StandardOpenOption.CREATE_NEW);
            return Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (AccessDeniedException refused) {
            // Nobody knows the temporary file by its name.
            AccessDeniedException named = new AccessDeniedException(file.toString());
            named.initCause(refused);
            throw named;
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    /** An empty file is taken as the place kept for one. */
    private static boolean isPdf(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] found = in.readNBytes(BEGINNING.length);
            return found.length == 0 || Arrays.equals(found, BEGINNING);
        }
    }
}

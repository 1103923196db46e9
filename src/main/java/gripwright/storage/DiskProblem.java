package gripwright.storage;

import gripwright.model.Problem;
import gripwright.model.ProblemException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** Says in a sentence what a disk refused, what that means and what to do. */
final class DiskProblem {

    private DiskProblem() {
    }

    static ProblemException reading(Path file, IOException cause) {
        return exception(file, "could not be read", cause);
    }

    static ProblemException writing(Path file, Exception cause) {
        return exception(file, "could not be saved", cause);
    }

    static ProblemException journal(Path file, Exception cause) {
        return new ProblemException(new Problem(Problem.Severity.FATAL, "", null, null, detail(cause),
                "The journal on this computer could not be written because " + reason(cause)), cause);
    }

    private static ProblemException exception(Path file, String what, Exception cause) {
        Path name = file.getFileName();
        String sentence = "The file " + what + " because " + reason(cause);
        return new ProblemException(new Problem(Problem.Severity.FATAL, name == null ? file.toString()
                : name.toString(), null, null, detail(cause), sentence), cause);
    }

    private static String reason(Exception cause) {
        String message = cause.getMessage() == null ? "" : cause.getMessage().toLowerCase(Locale.ROOT);
        if (message.contains("no space") || message.contains("not enough space") || message.contains("quota")) {
            return "the disk is full; free some space.";
        }
        if (message.contains("is a directory")) {
            return "it is a folder; choose a file.";
        }
        if (cause instanceof AccessDeniedException || cause instanceof ReadOnlyFileSystemException
                || message.contains("read-only") || message.contains("permission denied")) {
            return "the system does not allow it here; check the permissions of the file and its folder.";
        }
        if (cause instanceof NoSuchFileException) {
            return "the file or its folder is not there; check the name, the drive or the network.";
        }
        if (cause instanceof FileAlreadyExistsException || cause instanceof NotDirectoryException) {
            return "something else of that name is in the way; choose another name.";
        }
        return "the disk or the network refused it (" + detail(cause) + "); check the connection and the disk.";
    }

    private static String detail(Exception cause) {
        return cause.getMessage() == null ? cause.getClass().getSimpleName()
                : cause.getClass().getSimpleName() + ": " + cause.getMessage();
    }
}

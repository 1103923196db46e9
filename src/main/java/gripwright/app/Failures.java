package gripwright.app;

import gripwright.model.ProblemException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Turns what went wrong into a sentence for the person at the terminal. */
final class Failures {

    private Failures() {
    }

    static String sentence(Throwable failure) {
        if (failure instanceof ProblemException problem) {
            return problem.problem().text();
        }
        if (failure instanceof NoSuchFileException missing) {
            return "There is no file " + missing.getFile() + "; check the name and the folder.";
        }
        if (failure instanceof AccessDeniedException denied) {
            return "The file " + denied.getFile() + " may not be read or written here; check its permissions.";
        }
        if (failure instanceof IOException io) {
            return "Reading or writing failed: " + io.getMessage() + ". Nothing was changed.";
        }
        if (failure instanceof IllegalArgumentException refused) {
            return refused.getMessage();
        }
        return "Something unforeseen went wrong (" + failure + "); nothing was changed. Please report it with the file "
                + "that led to it.";
    }
}

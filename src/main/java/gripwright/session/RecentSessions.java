package gripwright.session;

import gripwright.model.ProblemException;
import java.nio.file.Path;
import java.util.List;

/** Which session files were open last; a port that storage implements. */
public interface RecentSessions {

    /** The files, newest first. */
    List<Path> read() throws ProblemException;

    /** Puts a file first. */
    void remember(Path file) throws ProblemException;
}

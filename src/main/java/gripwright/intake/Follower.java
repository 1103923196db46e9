package gripwright.intake;

import java.time.Instant;

/** Looks at a file or folder and tells what is new, without a thread or clock of its own. */
interface Follower {

    Arrival look(Instant now);

    SourceStatus status();

    /** Reads everything again with these answers. */
    void answer(Answers answers);

    void close();
}

package gripwright.intake;

/** A source that brings shots while the session goes on. */
public interface LiveSource extends AutoCloseable {

    /** Begins to listen; once. */
    void start(LiveListener listener);

    /** How the source is now. */
    SourceStatus status();

    /** Stops; nothing is brought afterwards. */
    @Override
    void close();
}

package gripwright.intake;

/** Hears what a live source brings; called on the source's own thread, one call at a time. */
public interface LiveListener {

    /** Shots, problems or questions have come. */
    void arrived(Arrival arrival);

    /** The source has changed its state, or its last reading is newer. */
    void changed(SourceStatus status);
}

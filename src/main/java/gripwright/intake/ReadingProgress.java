package gripwright.intake;

/** Told how far a long reading has come, and asked whether to go on. */
@FunctionalInterface
public interface ReadingProgress {

    /** Nobody listens; never broken off. */
    ReadingProgress SILENT = fraction -> true;

    /**
     * Called every few hundred rows, on the thread that reads.
     *
     * @param fraction how much is done, 0 to 1
     * @return whether to go on; false breaks the reading off and nothing is taken
     */
    boolean goOn(double fraction);
}

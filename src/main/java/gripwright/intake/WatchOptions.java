package gripwright.intake;

import java.time.Duration;

/**
 * How a file or folder is watched.
 *
 * @param skipExisting whether the shots that are there at the start are somebody else's and not brought
 * @param poll how often to look where no event says that something has changed; network folders have none
 * @param quiet how long a last line without an end must stay as it is before it is taken as provisional
 */
public record WatchOptions(boolean skipExisting, Duration poll, Duration quiet) {

    /** Everything that is there is taken; looks 25 times a second, which is one question to the disk each time. */
    public static WatchOptions usual() {
        return new WatchOptions(false, Duration.ofMillis(40), Duration.ofSeconds(2));
    }

    public WatchOptions {
        if (poll.isNegative() || poll.isZero() || quiet.isNegative()) {
            throw new IllegalArgumentException("The time between two looks must be above zero, the quiet one not negative.");
        }
    }

    public WatchOptions withSkipExisting(boolean skipExisting) {
        return new WatchOptions(skipExisting, poll, quiet);
    }

    public WatchOptions withPoll(Duration poll) {
        return new WatchOptions(skipExisting, poll, quiet);
    }

    public WatchOptions withQuiet(Duration quiet) {
        return new WatchOptions(skipExisting, poll, quiet);
    }
}

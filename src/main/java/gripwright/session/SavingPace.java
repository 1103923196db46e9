package gripwright.session;

import java.time.Duration;

/**
 * How patiently the session is saved.
 *
 * @param fileDelay how long after a change the file is saved, so that changes in a row make one saving
 * @param firstRetry how long after a failure the next attempt comes; each further one waits twice as long
 * @param longestRetry the longest wait between attempts
 * @param beat how often other windows are told that this one is still at work
 * @param farewell how long closing waits for a disk or network that does not answer
 */
public record SavingPace(Duration fileDelay, Duration firstRetry, Duration longestRetry, Duration beat,
        Duration farewell) {

    /** Half a second after a change; after failures 1 s, 2 s, … up to a minute. */
    public static SavingPace usual() {
        return new SavingPace(Duration.ofMillis(500), Duration.ofSeconds(1), Duration.ofMinutes(1),
                Duration.ofSeconds(20), Duration.ofSeconds(10));
    }

    /** The wait after so many failures in a row, from 1. */
    Duration retry(int failures) {
        Duration wait = firstRetry;
        for (int doubled = 1; doubled < failures && wait.compareTo(longestRetry) < 0; doubled++) {
            wait = wait.multipliedBy(2);
        }
        return wait.compareTo(longestRetry) < 0 ? wait : longestRetry;
    }
}

package gripwright.report;

/**
 * One line of what a test showed, in plain words.
 *
 * @param what the metric, 'Club speed'
 * @param words the verdict in words, 'probably faster'
 * @param by by how much, '+1.2 mph'; empty where it can't be known
 * @param range the range that should hold it, '+0.1 to +2.3'; empty where it can't be known
 * @param chance how sure, '87 in 100'; empty where it says nothing
 * @param primary whether the goal names it
 */
public record StoryLine(String what, String words, String by, String range, String chance, boolean primary) {

    /** By how much, with its range: '+1.2 mph (+0.1 to +2.3)'; empty where it can't be known. */
    public String amount() {
        return range.isEmpty() ? by : by + " (" + range + ")";
    }

    /** All of it in one sentence. */
    public String sentence() {
        String tail = by.isEmpty() ? "" : ": " + amount();
        return what + ", " + words + tail + ".";
    }
}

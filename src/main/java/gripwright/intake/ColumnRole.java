package gripwright.intake;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a column can hold besides a reading. */
public enum ColumnRole {
    /** The source's own name or number of a shot. */
    SHOT_ID("shotId", "the shot's own number"),
    /** Clock time, or date and time in one. */
    TIME("time", "time"),
    DATE("date", "date"),
    STINT("stint", "stint"),
    CONFIGURATION("configuration", "configuration"),
    /** Warm-up, settling or scored. */
    KIND("kind", "kind of stint"),
    /** Blank or 'no' where a shot counts; else the reason why it does not. */
    SET_ASIDE("setAside", "reason for setting aside"),
    /** Whether the grip or club was changed before this stint. */
    CHANGED("changed", "grip changed before the stint"),
    NOTE("note", "note"),
    CLUB("club", "club"),
    PLAYER("player", "player"),
    /** Known and not wanted. */
    IGNORE("ignore", "left out");

    private static final Map<String, ColumnRole> BY_KEY =
            Stream.of(values()).collect(Collectors.toUnmodifiableMap(ColumnRole::key, Function.identity()));

    private final String key;
    private final String text;

    ColumnRole(String key, String text) {
        this.key = key;
        this.text = text;
    }

    /** The name in saved mappings. */
    public String key() {
        return key;
    }

    /** The name for people. */
    public String text() {
        return text;
    }

    /** The role with this key. */
    public static Optional<ColumnRole> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }
}

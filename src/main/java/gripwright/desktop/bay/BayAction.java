package gripwright.desktop.bay;

import gripwright.desktop.support.Place;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What can be done in the bay, each with its key.
 *
 * <p>A letter works wherever nothing takes typing; the function key works while a field is being typed into as well, so
 * that no key is ever taken from a field.
 */
public enum BayAction {
    TYPE("E", "F2", "Type a shot", "type the readings of a shot; Tab to the next cell, Enter records"),
    SET_ASIDE("X", "F3", "Set aside", "set the last shot aside, with a reason"),
    BRING_BACK("B", "F4", "Bring back", "bring back the shot that was set aside last"),
    END_STINT("S", "F5", "End stint", "end the stint in hand; the feel is asked then"),
    START_NEXT("N", "F6", "Start next", "start the next stint of the queue"),
    NOTE("T", "F7", "Note", "note something: a word, another ball, glove or mat, pain"),
    SWITCH("C", "F8", "Switch", "correct the configuration of the stint, or choose the next one"),
    REPEAT("R", "F9", "Repeat", "hit this configuration again, now or at the end"),
    FEEL("F", "", "Feel", "the player's feel of the stint"),
    TRAY("P", "", "Tray", "give the shots in the tray a place"),
    TWIST("K", "", "Twist checked", "the mark across grip and shaft has been looked at"),
    HIDE("H", "", "Hide", "hide figures or names from the player"),
    SOURCE("W", "", "Source", "watch a file or folder, or rehearse"),
    UNDO("U", "Ctrl+Z", "Undo", "take back the last step"),
    REDO("Y", "Ctrl+Y", "Redo", "do again what was taken back");

    private final String key;
    private final String typingKey;
    private final String text;
    private final String what;

    BayAction(String key, String typingKey, String text, String what) {
        this.key = key;
        this.typingKey = typingKey;
        this.text = text;
        this.what = what;
    }

    /** The letter that does it where nothing takes typing. */
    public String key() {
        return key;
    }

    /** The key that does it also while something is typed; empty where there is none. */
    public String typingKey() {
        return typingKey;
    }

    /** The words on its button. */
    public String text() {
        return text;
    }

    /** What it does, for the overlay of keys. */
    public String what() {
        return what;
    }

    /** The action of a letter. */
    public static Optional<BayAction> ofKey(String key) {
        return Stream.of(values()).filter(action -> action.key.equals(key)).findFirst();
    }

    /** The action of a function key. */
    public static Optional<BayAction> ofTypingKey(String key) {
        return Stream.of(values()).filter(a -> a.typingKey.equals(key) && key.startsWith("F")).findFirst();
    }

    /** All keys of the bay, for the overlay. */
    public static List<Place.KeyLine> keyLines() {
        Stream<Place.KeyLine> actions = Stream.of(values()).map(action -> new Place.KeyLine(
                action.typingKey.isEmpty() ? action.key : action.key + ", typing " + action.typingKey, action.what));
        return Stream.concat(actions, Stream.of(
                new Place.KeyLine("Enter", "record the line; choose the first answer"),
                new Place.KeyLine("1 \u2026 9", "choose an answer, where one is asked for"),
                new Place.KeyLine("Ctrl+V", "paste rows of readings"),
                new Place.KeyLine("Escape", "leave the field or the question"))).toList();
    }
}

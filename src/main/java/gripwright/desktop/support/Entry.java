package gripwright.desktop.support;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.StringProperty;

/**
 * What is typed into one field until it becomes an edit: the text, whether it differs from what is kept, and what is wrong
 * with it.
 *
 * <p>Enter and leaving the field commit; Escape puts back what is kept. Text that can't be taken stays, with its problem,
 * until it is mended or put back.
 */
public interface Entry {

    /** What the field is for, as a person calls it: 'hand length'. */
    String name();

    StringProperty text();

    /** What is wrong with the text, in a sentence; empty when nothing is. */
    ReadOnlyStringProperty problem();

    /** The unit behind the field; empty for none. */
    ReadOnlyStringProperty unit();

    /** Somebody goes into the field: what was rounded to be read may be shown as it was typed. */
    default void begin() {
    }

    /** Whether the text differs from what is kept. */
    boolean isDirty();

    /** Makes an edit of the text; says whether it is in order now. */
    boolean commit();

    /** Puts back what is kept. */
    void restore();
}

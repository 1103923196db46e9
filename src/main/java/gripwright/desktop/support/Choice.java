package gripwright.desktop.support;

import java.util.Optional;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;

/**
 * One of several values that is chosen in a field, and the edit that choosing makes.
 *
 * @param name what the choice is about, 'hand'
 * @param kept the value kept now; null where nothing is chosen
 * @param keep makes an edit of a chosen value; gives back why it can't be, or empty
 * @param <T> the values to choose from
 */
public record Choice<T>(String name, ObservableValue<T> kept, Function<T, Optional<String>> keep) {
}

package gripwright.units;

import java.util.Optional;
import java.util.OptionalDouble;

/** What became of a text that should be a number: a value, a blank, or a problem in words; never an invented zero. */
public sealed interface ParsedNumber {

    /** A finite number. */
    record Value(double value) implements ParsedNumber {
    }

    /** Nothing was written. */
    record Blank() implements ParsedNumber {
    }

    /** Something was written that is no number, or could be two; {@code sentence} says what and what to write. */
    record NotANumber(String sentence) implements ParsedNumber {
    }

    /** The value, if there is one. */
    default OptionalDouble asDouble() {
        return this instanceof Value number ? OptionalDouble.of(number.value) : OptionalDouble.empty();
    }

    /** What is wrong, if something is. */
    default Optional<String> problem() {
        return this instanceof NotANumber wrong ? Optional.of(wrong.sentence()) : Optional.empty();
    }
}

package gripwright.model;

import java.util.List;

/** The checks that the records make at construction, each refusing with a sentence. */
final class Check {

    private Check() {
    }

    static String text(String value, String what) {
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException("The " + what + " is missing; give it a text.");
        }
        return value;
    }

    static String orEmpty(String value) {
        return value == null ? "" : value;
    }

    static <T> T present(T value, String what) {
        if (value == null) {
            throw new IllegalArgumentException("The " + what + " is missing.");
        }
        return value;
    }

    static <T> List<T> list(List<T> values) {
        return values == null ? List.of() : List.copyOf(values);
    }

    static double finite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("The " + what + " must be a number, not " + value + ".");
        }
        return value;
    }

    static double notNegative(double value, String what) {
        if (finite(value, what) < 0) {
            throw new IllegalArgumentException("The " + what + " can't be negative, but is " + value + ".");
        }
        return value;
    }

    static double positive(double value, String what) {
        if (finite(value, what) <= 0) {
            throw new IllegalArgumentException("The " + what + " must be above zero, but is " + value + ".");
        }
        return value;
    }

    static void optionalNotNegative(Double value, String what) {
        if (value != null) {
            notNegative(value, what);
        }
    }

    static void optionalPositive(Double value, String what) {
        if (value != null) {
            positive(value, what);
        }
    }

    static void optionalFinite(Double value, String what) {
        if (value != null) {
            finite(value, what);
        }
    }

    static int atLeast(int value, int least, String what) {
        if (value < least) {
            throw new IllegalArgumentException("The " + what + " must be at least " + least + ", but is " + value + ".");
        }
        return value;
    }

    static void optionalBetween(Integer value, int least, int most, String what) {
        if (value != null && (value < least || value > most)) {
            throw new IllegalArgumentException(
                    "The " + what + " runs from " + least + " to " + most + ", but is " + value + ".");
        }
    }
}

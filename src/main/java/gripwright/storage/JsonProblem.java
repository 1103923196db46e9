package gripwright.storage;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.InvalidNullException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import gripwright.model.Problem;
import java.time.Instant;
import java.time.LocalDate;

/** Says in a sentence, with line and column, what is wrong with a piece of JSON. */
final class JsonProblem {

    private static final int LONGEST_QUOTE = 60;
    /** How the library begins what it says about these. */
    private static final String DUPLICATE = "Duplicate field ";
    private static final String TRAILING = "Trailing token";
    private static final String UNTOUCHED = " The file was left as it is. Mend the place, or take an earlier copy of "
            + "the file.";

    private JsonProblem() {
    }

    static Problem of(String where, JsonProcessingException cause) {
        JsonLocation location = cause.getLocation();
        Integer line = location == null || location.getLineNr() < 1 ? null : location.getLineNr();
        Integer column = location == null || location.getColumnNr() < 1 ? null : location.getColumnNr();
        String sentence = cause instanceof JsonMappingException mapping ? ofContent(mapping) : ofSyntax(cause);
        return new Problem(Problem.Severity.FATAL, where, line, column, found(cause), sentence + UNTOUCHED);
    }

    private static String ofSyntax(JsonProcessingException cause) {
        if (cause instanceof StreamConstraintsException) {
            return "The file can't be read: something in it is larger or deeper than any file of this program.";
        }
        String reason = String.valueOf(cause.getOriginalMessage());
        if (reason.startsWith(DUPLICATE)) {
            return "The field " + reason.substring(DUPLICATE.length()) + " stands twice and can't be read; keep one of them.";
        }
        return "The file is damaged or is no JSON: from here on it can't be read.";
    }

    private static String ofContent(JsonMappingException cause) {
        if (String.valueOf(cause.getOriginalMessage()).startsWith(TRAILING)) {
            return "The file goes on after its end, as two files in one do; one document is expected.";
        }
        String place = place(cause);
        if (cause instanceof ValueInstantiationException && cause.getCause() instanceof IllegalArgumentException reason
                && reason.getMessage() != null) {
            return place + " can't be as it stands: " + reason.getMessage();
        }
        if (cause instanceof InvalidNullException) {
            return place + " holds nothing (null) where a value is needed.";
        }
        if (cause instanceof MismatchedInputException mismatch && mismatch.getTargetType() != null) {
            return place + " must be " + expected(mismatch.getTargetType()) + ".";
        }
        return place + " can't be read.";
    }

    private static String place(JsonMappingException cause) {
        StringBuilder path = new StringBuilder();
        for (JsonMappingException.Reference step : cause.getPath()) {
            if (step.getFieldName() != null) {
                path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
            } else {
                path.append('[').append(step.getIndex() + 1).append(']');
            }
        }
        return path.isEmpty() ? "The content" : "'" + path + "'";
    }

    private static String expected(Class<?> type) {
        if (type.isEnum()) {
            return "one of " + EnumText.choices(type);
        }
        if (type == String.class) {
            return "a text";
        }
        if (type == boolean.class || type == Boolean.class) {
            return "true or false";
        }
        if (type == int.class || type == Integer.class || type == long.class || type == Long.class) {
            return "a whole number";
        }
        if (type == double.class || type == Double.class) {
            return "a number";
        }
        if (type == char.class || type == Character.class) {
            return "one sign in quotation marks, such as \".\"";
        }
        if (type == LocalDate.class) {
            return "a date such as \"2026-03-31\"";
        }
        if (type == Instant.class) {
            return "a moment such as \"2026-03-31T09:15:00Z\"";
        }
        return Iterable.class.isAssignableFrom(type) ? "a list [ … ]" : "an object { … }";
    }

    private static String found(JsonProcessingException cause) {
        String found = cause instanceof InvalidFormatException format ? String.valueOf(format.getValue())
                : cause.getOriginalMessage();
        if (found == null) {
            return "";
        }
        return found.length() <= LONGEST_QUOTE ? found : found.substring(0, LONGEST_QUOTE) + "…";
    }
}

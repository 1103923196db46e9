package gripwright.desktop.support;

import gripwright.units.Swingweight;
import java.util.Optional;

/** Swingweights as they are typed: 'D2', 'C8.5'. */
public final class SwingweightText {

    private SwingweightText() {
    }

    /**
     * The swingweight that is written there.
     *
     * @throws IllegalArgumentException with a sentence when it is none
     */
    public static Swingweight needed(String text) {
        return Swingweight.parse(text).orElseThrow(() -> new IllegalArgumentException(
                "'" + text + "' is not a swingweight; write a letter and a number, like D2 or C8.5."));
    }

    /** As {@link #needed}; blank text is 'not read', which is null. */
    public static Swingweight optional(String text) {
        return text.isBlank() ? null : needed(text);
    }

    /** The swingweight as it is typed; empty for null. */
    public static String write(Swingweight swingweight) {
        return swingweight == null ? "" : swingweight.text();
    }

    /** Why a text is no swingweight; empty when it is one, or blank. */
    public static Optional<String> problem(String text) {
        try {
            optional(text);
            return Optional.empty();
        } catch (IllegalArgumentException refused) {
            return Optional.of(refused.getMessage());
        }
    }
}

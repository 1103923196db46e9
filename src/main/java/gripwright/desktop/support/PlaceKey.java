package gripwright.desktop.support;

import java.util.Optional;

/** The seven places of the workbench in the order of work, each with the digit that goes there. */
public enum PlaceKey {
    SETUP("Setup", "Who plays, with which club, for what."),
    PLAN("Plan", "Which grips are tried, and in which order."),
    BAY("Bay", "Shots as they are hit, one stint after the other."),
    COMPARE("Compare", "What the readings say, with how much doubt."),
    BALANCE("Balance", "The club as a lever, and how each grip moves it."),
    REVIEW("Review", "For the player: few words, big pictures."),
    PRINT("Print", "The pages, exactly as they come out.");

    private final String title;
    private final String purpose;

    PlaceKey(String title, String purpose) {
        this.title = title;
        this.purpose = purpose;
    }

    /** The word on the rail. */
    public String title() {
        return title;
    }

    /** One sentence on what the place is for. */
    public String purpose() {
        return purpose;
    }

    /** The digit that goes there, 1 to 7. */
    public int digit() {
        return ordinal() + 1;
    }

    /** The place with this digit. */
    public static Optional<PlaceKey> ofDigit(int digit) {
        return digit >= 1 && digit <= values().length ? Optional.of(values()[digit - 1]) : Optional.empty();
    }
}

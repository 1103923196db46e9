package gripwright.comparison;

import java.util.Optional;

/** What may be said of one configuration against another in the direction that serves this player. */
public enum Verdict {
    BETTER("better"),
    PROBABLY_BETTER("probably-better"),
    SAME("same"),
    PROBABLY_WORSE("probably-worse"),
    WORSE("worse"),
    NOT_SETTLED("not-settled");

    private final String wire;

    Verdict(String wire) {
        this.wire = wire;
    }

    /** The spelling in JSON. */
    public String wire() {
        return wire;
    }

    /** The verdict with this spelling. */
    public static Optional<Verdict> ofWire(String wire) {
        for (Verdict verdict : values()) {
            if (verdict.wire.equals(wire)) {
                return Optional.of(verdict);
            }
        }
        return Optional.empty();
    }

    /** The verdict with the two sides swapped. */
    public Verdict reversed() {
        return switch (this) {
            case BETTER -> WORSE;
            case PROBABLY_BETTER -> PROBABLY_WORSE;
            case PROBABLY_WORSE -> PROBABLY_BETTER;
            case WORSE -> BETTER;
            case SAME, NOT_SETTLED -> this;
        };
    }

    /** Whether it says that one side serves the player more, surely or probably. */
    public boolean takesSides() {
        return this != SAME && this != NOT_SETTLED;
    }
}

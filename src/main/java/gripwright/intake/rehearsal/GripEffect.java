package gripwright.intake.rehearsal;

/**
 * What a configuration does to a simulated player.
 *
 * @param shift what it adds to the mean delivery
 * @param spread what it multiplies all standard deviations by; 1 for no change
 */
public record GripEffect(Swing shift, double spread) {

    /** A configuration that changes nothing. */
    public static GripEffect none() {
        return new GripEffect(Swing.none(), 1);
    }

    public GripEffect {
        if (!(spread > 0)) {
            throw new IllegalArgumentException("The spread must be multiplied by more than zero, not by " + spread + ".");
        }
    }
}

package gripwright.desktop.bay;

/**
 * What the player doesn't see while hitting, so that neither the name of a grip nor a number steers the swing.
 *
 * @param figures whether readings, pictures and verdicts are hidden
 * @param names whether the names of grips are hidden; labels and marks stay for the fitter
 */
public record Hiding(boolean figures, boolean names) {

    public static final Hiding NOTHING = new Hiding(false, false);

    /** The next of the four ways: nothing, figures, names, both. */
    public Hiding next() {
        if (figures) {
            return names ? NOTHING : new Hiding(false, true);
        }
        return names ? new Hiding(true, true) : new Hiding(true, false);
    }

    /** What is hidden, for the screen; empty where nothing is. */
    public String text() {
        if (figures && names) {
            return "figures and names hidden";
        }
        return figures ? "figures hidden" : names ? "names hidden" : "";
    }
}

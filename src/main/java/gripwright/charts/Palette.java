package gripwright.charts;

import java.awt.Color;

/**
 * The colours of configurations: the colour-blind-safe set of Okabe and Ito, always with a marker shape and a label.
 *
 * <p>Source: Okabe and Ito, Color Universal Design (2008). Black takes the last place and is drawn as the ink of the
 * medium, so that it shows on a dark ground; yellow is drawn a little darker on light grounds.
 */
public final class Palette {

    private static final int[] OKABE_ITO = {
        0x0072B2, 0xD55E00, 0x009E73, 0xCC79A7, 0xE69F00, 0x56B4E9, 0xF0E442, 0x000000,
    };
    private static final int YELLOW = 6;
    private static final int BLACK = 7;
    private static final int YELLOW_ON_LIGHT = 0xB8AC00;

    private Palette() {
    }

    /** The published colour at this place, without regard to the ground; indices wrap. */
    public static Color published(int index) {
        return new Color(OKABE_ITO[Math.floorMod(index, OKABE_ITO.length)]);
    }

    /** The colour at this place as it is drawn on this ground; indices wrap. */
    public static Color of(int index, Look look) {
        int place = Math.floorMod(index, OKABE_ITO.length);
        if (place == BLACK) {
            return look.ink();
        }
        if (place == YELLOW && !look.dark()) {
            return new Color(YELLOW_ON_LIGHT);
        }
        if (place == 0 && look.dark()) {
            return new Color(0x3D9BD6);
        }
        return new Color(OKABE_ITO[place]);
    }
}

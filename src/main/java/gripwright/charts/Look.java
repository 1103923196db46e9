package gripwright.charts;

import java.awt.Color;
import java.awt.Font;

/**
 * How a medium draws: its ground, inks and letter size. Colour belongs to configurations, so everything else is grey.
 *
 * @param ground the paper
 * @param ink text and marks that matter
 * @param quiet text that is only there
 * @param hairline axes and rules
 * @param band ground of what doesn't matter
 * @param dark whether the ground is dark
 * @param family font family, the one that ships with the program
 * @param textSize size of plain text, in the units of the area
 */
public record Look(Color ground, Color ink, Color quiet, Color hairline, Color band, boolean dark, String family,
        double textSize) {

    /** The font family that ships with the program. */
    public static final String FAMILY = "Lato";

    /** For paper: white, 8.5 pt. */
    public static Look paper() {
        return new Look(Color.WHITE, new Color(0x1B1D1F), new Color(0x5C6166), new Color(0xB9BDC2),
                new Color(0xE9EBED), false, FAMILY, 8.5);
    }

    /** For a light screen. */
    public static Look light(double textSize) {
        return new Look(new Color(0xFCFCFB), new Color(0x1B1D1F), new Color(0x5A6067), new Color(0xC3C7CC),
                new Color(0xE8EAEC), false, FAMILY, textSize);
    }

    /** For a dark screen. */
    public static Look dark(double textSize) {
        return new Look(new Color(0x16191C), new Color(0xECEEF0), new Color(0xA3AAB2), new Color(0x4A5158),
                new Color(0x2A2F35), true, FAMILY, textSize);
    }

    /** Plain text. */
    public Font plain() {
        return new Font(family, Font.PLAIN, 1).deriveFont((float) textSize);
    }

    /** Bold text. */
    public Font bold() {
        return new Font(family, Font.BOLD, 1).deriveFont((float) textSize);
    }

    /** Small text, for axes; never under 70 % of plain text. */
    public Font small() {
        return plain().deriveFont((float) (textSize * 0.85));
    }

    /** The same look with another letter size. */
    public Look withTextSize(double size) {
        return new Look(ground, ink, quiet, hairline, band, dark, family, size);
    }
}

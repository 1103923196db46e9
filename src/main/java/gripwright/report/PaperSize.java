package gripwright.report;

import java.util.Arrays;
import java.util.Optional;

/** The papers that pages are laid out on. */
public enum PaperSize {
    A4("A4", 210, 297),
    LETTER("Letter", 215.9, 279.4);

    private final String text;
    private final double widthMm;
    private final double heightMm;

    PaperSize(String text, double widthMm, double heightMm) {
        this.text = text;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** 'A4' or 'Letter', letter case ignored. */
    public static Optional<PaperSize> ofText(String text) {
        return Arrays.stream(values()).filter(paper -> paper.text.equalsIgnoreCase(text)).findFirst();
    }

    public String text() {
        return text;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}

package gripwright.charts;

import static org.assertj.core.api.Assertions.assertThat;

import gripwright.model.MarkerShape;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** An outline widens the picture of the shots only so far; past that it is cut, and the picture knows. */
class PatternPictureTest {

    private static final Look LOOK = Look.light(12);

    private static Pattern pattern(double semiMajor) {
        List<Pattern.Point> points = List.of(new Pattern.Point(-20, 130, MarkPainter.State.PLAIN),
                new Pattern.Point(20, 170, MarkPainter.State.PLAIN), new Pattern.Point(0, 60, MarkPainter.State.SET_ASIDE));
        List<Pattern.Ellipse> outline = List.of(new Pattern.Ellipse(0, 150, semiMajor, 10, 0));
        return new Pattern(List.of(new Pattern.Group(new Mark(0, MarkerShape.values()[0], "A"), points, outline)), null, 0,
                "yd", '.').withoutSetAside();
    }

    @Test
    void knowsWhetherItCutsAnOutline() {
        // The shots span 40 sideways; half of that may be added on each side: from -40 to 40.
        assertThat(new PatternPicture(pattern(39)).cutsAnOutline()).isFalse();
        assertThat(new PatternPicture(pattern(41)).cutsAnOutline()).isTrue();
    }

    @Test
    void anOutlineOfFewShotsDoesNotShrinkTheShots() {
        assertThat(shotsSpan(pattern(4000))).isEqualTo(shotsSpan(pattern(40))).isGreaterThan(50);
    }

    @Test
    void leavesOutWhatWasSetAside() {
        assertThat(pattern(10).groups().get(0).points()).hasSize(2);
    }

    /** Pixels between the leftmost and the rightmost mark, which alone are painted in the full colour over an area. */
    private static int shotsSpan(Pattern pattern) {
        BufferedImage image = PictureImage.of(new PatternPicture(pattern), 400, 400, 1, LOOK);
        int full = Palette.of(0, LOOK).getRGB();
        Rectangle found = null;
        for (int x = 2; x < image.getWidth() - 2; x++) {
            for (int y = 2; y < image.getHeight() - 2; y++) {
                boolean area = true;
                for (int dx = -1; dx <= 1; dx++) {
                    for (int dy = -1; dy <= 1; dy++) {
                        area &= image.getRGB(x + dx, y + dy) == full;
                    }
                }
                if (area) {
                    found = found == null ? new Rectangle(x, y, 1, 1) : found.union(new Rectangle(x, y, 1, 1));
                }
            }
        }
        return found == null ? 0 : found.width;
    }
}

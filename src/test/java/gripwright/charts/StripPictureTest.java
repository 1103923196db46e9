package gripwright.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.MarkerShape;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

class StripPictureTest {

    private static final Look LOOK = Look.light(14);
    private static final int WIDTH = 900;

    private static Strip strip(String detail, String words) {
        Strip.Row row = new Strip.Row(new Mark(0, MarkerShape.values()[0], "A"), detail, List.of(), 5.0, null, null,
                "5.0", words, false);
        return new Strip("metric", "", "", new Scale(0, 10, 5), null, List.of(row), '.');
    }

    /** Where the axis begins and ends: the hairlines of the lowest and the highest tick. */
    private static int[] plot(StripPicture picture) {
        int height = (int) picture.heightFor(WIDTH, LOOK);
        BufferedImage image = PictureImage.of(picture, WIDTH, height, 1, LOOK);
        int y = (int) (LOOK.textSize() * (2.9 + 2.0)) - 2;
        int ground = LOOK.ground().getRGB();
        int first = -1;
        int last = -1;
        for (int x = 0; x < WIDTH; x++) {
            if (image.getRGB(x, y) != ground) {
                first = first < 0 ? x : first;
                last = x;
            }
        }
        return new int[] {first, last};
    }

    @Test
    void stackedStripsBeginAndEndTheirPlotsAtTheSamePlace() {
        Strip narrow = strip("", "");
        Strip wide = strip("a long detail", "not settled, leans closed");
        int[] alone = plot(new StripPicture(narrow));
        int[] other = plot(new StripPicture(wide));
        assertThat(other[0]).isGreaterThan(alone[0] + 20);
        assertThat(other[1]).isLessThan(alone[1] - 20);

        List<StripPicture> stacked = StripPicture.stacked(List.of(narrow, wide));
        assertThat(plot(stacked.get(0))[0]).isCloseTo(plot(stacked.get(1))[0], within(1));
        assertThat(plot(stacked.get(0))[1]).isCloseTo(plot(stacked.get(1))[1], within(1));
        assertThat(plot(stacked.get(0))).isEqualTo(other);
    }

    @Test
    void aStripStackedAloneIsDrawnAsItIs() {
        Strip only = strip("50 g", "not settled");
        assertThat(plot(StripPicture.stacked(List.of(only)).get(0))).isEqualTo(plot(new StripPicture(only)));
    }
}

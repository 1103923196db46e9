package gripwright.charts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.balance.BalanceCalculator;
import gripwright.balance.SevenIron;
import gripwright.balance.TestBalance;
import gripwright.model.ClubTest;
import gripwright.model.ShopSettings;
import gripwright.units.UnitChoice;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LeverPictureTest {

    private static final ClubTest TEST = SevenIron.test();
    private static final TestBalance BALANCE = BalanceCalculator.with(ShopSettings.usual()).of(TEST);

    private static Lever lever(int index) {
        return Lever.of(BALANCE.configurations().get(index), TEST.configurations().get(index), TEST.club(),
                BALANCE.scale());
    }

    @Test
    void onTheWayEverythingLiesBetween() {
        Lever half = lever(0).towards(lever(3), 0.5);
        assertThat(half.balancePointMm()).isCloseTo((28.016 + 26.765) / 2 * 25.4, within(0.02));
        assertThat(half.swingweight().points())
                .isCloseTo((lever(0).swingweight().points() + lever(3).swingweight().points()) / 2, within(1e-9));
        assertThat(lever(0).towards(lever(3), 0)).isEqualTo(lever(0));
        assertThat(lever(0).towards(lever(3), 1)).isEqualTo(lever(3));
    }

    @Test
    void theWeightsOfTheLeverAddUpToItsSwingweight() {
        double points = lever(1).weights().stream().mapToDouble(Lever.Weight::points).sum();
        assertThat(points - 161 / 1.75).isCloseTo(lever(1).swingweight().points(), within(1e-9));
    }

    @Test
    void bothMarksAreDrawnInTheirColours() {
        Look look = Look.light(14);
        LeverPicture picture = new LeverPicture(lever(0), lever(3), 1, UnitChoice.imperial(), '.');
        BufferedImage image = PictureImage.of(picture, 1000, (int) picture.heightFor(1000, look), 1, look);
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                colours.add(image.getRGB(x, y));
            }
        }
        assertThat(colours).contains(Palette.of(0, look).getRGB(), Palette.of(3, look).getRGB());
    }

    @Test
    void nothingIsDrawnBesideTheArea() {
        Look look = Look.dark(14);
        LeverPicture picture = new LeverPicture(lever(0), lever(3), 0.5, UnitChoice.metric(), ',');
        int height = (int) Math.ceil(picture.heightFor(900, look));
        BufferedImage image = new BufferedImage(1100, height + 200, BufferedImage.TYPE_INT_RGB);
        var graphics = image.createGraphics();
        ShippedFonts.register();
        picture.draw(graphics, new java.awt.geom.Rectangle2D.Double(100, 100, 900, height), look);
        graphics.dispose();
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                boolean inside = x >= 99 && x <= 1001 && y >= 99 && y <= 101 + height;
                if (!inside) {
                    assertThat(new Color(image.getRGB(x, y))).as("%d, %d", x, y).isEqualTo(Color.BLACK);
                }
            }
        }
    }

    @Test
    void aClubKnownFromReadingsAloneIsDrawnWithoutWeightsItDoesNotHave() {
        ClubTest blind = TEST.withClub(TEST.club().withParts(java.util.List.of()));
        TestBalance balance = BalanceCalculator.with(ShopSettings.usual()).of(blind);
        Lever lever = Lever.of(balance.configurations().get(0), blind.configurations().get(0), blind.club(),
                balance.scale());
        assertThat(lever.weights()).extracting(Lever.Weight::name).containsExactly("grip");
        assertThat(lever.balancePointMm()).isNull();
        LeverPicture picture = new LeverPicture(lever, lever, 1, UnitChoice.imperial(), '.');
        assertThat(PictureImage.of(picture, 600, 300, 1, Look.light(14)).getWidth()).isEqualTo(600);
    }

    @Test
    void theStripHoldsEveryPredictionAndReading() {
        SwingweightStrip strip = SwingweightStrip.of(TEST, BALANCE, '.');
        assertThat(strip.rows()).hasSize(4);
        assertThat(strip.rows().get(1).predicted()).isCloseTo(30.19, within(0.01));
        assertThat(strip.rows().get(1).read()).isNull();
        Look look = Look.light(14);
        assertThat(strip.heightFor(800, look)).isGreaterThan(4 * 14);
        assertThat(PictureImage.of(strip, 800, 200, 1, look).getHeight()).isEqualTo(200);
    }
}

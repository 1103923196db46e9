package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScreeningTest {

    private static final double NAN = Double.NaN;

    /** The formula of Iglewicz and Hoaglin coded in R 4.2.2, group by group. */
    @ParameterizedTest
    @CsvSource({"plantgrowth, plantgrowth.csv, weight, group", "insectsprays, insectsprays.csv, count, spray",
        "chickwts, chickwts.csv, weight, feed", "warpbreaks_tension, warpbreaks.csv, breaks, tension",
        "iris_sepal_width, iris.csv, Sepal.Width, Species", "sleep, sleep_student1908.csv, extra, group",
        "morley, morley.csv, Speed, Expt"})
    void scoresOfOneGroupMatch(String name, String file, String value, String group) {
        JsonNode expected = ClassicalReference.json("reference_oneway.json").get("results").get(name)
            .get("modified_z").get("per_group");
        GroupedData data = GroupedData.read(file, value, group);
        for (String label : data.labels()) {
            double[] scores = ModifiedZ.of(data.group(label));
            assertThat(expected.get(label)).hasSize(scores.length);
            for (int i = 0; i < scores.length; i++) {
                assertThat(scores[i]).isCloseTo(expected.get(label).get(i).asDouble(), within(1e-10));
            }
        }
    }

    @Test
    void fallbacks() {
        assertThat(ModifiedZ.of(new double[] {5, 5, 5, 5, 9})[4])
            .as("MAD 0: mean absolute deviation 0.8").isCloseTo(4 / (1.253314 * 0.8), within(1e-12));
        assertThat(ModifiedZ.of(new double[] {2, 2, NAN})).containsExactly(0, 0, NAN);
        assertThat(ModifiedZ.of(new double[] {7})).containsExactly(0);
        assertThat(ModifiedZ.of(new double[0])).isEmpty();
        assertThat(ModifiedZ.pooled(new double[] {1, 2, 4}, new int[] {0, 0, 0}).shortfall())
            .isEqualTo(Shortfall.TOO_FEW_VALUES);
        assertThat(ModifiedZ.pooled(new double[] {1, 2, 3, 4, 5, 6}, new int[] {0, 1, 2, 3, 4, 5}).shortfall())
            .as("groups of one tell no spread").isEqualTo(Shortfall.TOO_FEW_VALUES);
        assertThatThrownBy(() -> ModifiedZ.pooled(new double[2], new int[3])).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void pooledScoresUseOneSpreadAndEachGroupsOwnMiddle() {
        double[] values = {10, 11, 12, 13, 20, 22, 24, 26};
        int[] group = {3, 3, 3, 3, 8, 8, 8, 8};
        // deviations .5 .5 1.5 1.5 and 1 1 3 3: MAD 1.25
        double[] scores = ModifiedZ.pooled(values, group).get();
        assertThat(scores[0]).isCloseTo(-0.6745 * 1.5 / 1.25, within(1e-12));
        assertThat(scores[7]).isCloseTo(0.6745 * 3 / 1.25, within(1e-12));
    }

    @Property(tries = 60)
    void scoresKeepUnderUnitsAndLevelsOfGroups(@ForAll @DoubleRange(min = 0.1, max = 50) double scale,
                                               @ForAll @DoubleRange(min = -100, max = 100) double level) {
        double[] values = {1, 3, 2, 9, 4, 6, 5, 1};
        int[] group = {0, 0, 0, 0, 1, 1, 1, 1};
        double[] moved = IntStream.range(0, 8).mapToDouble(i -> scale * values[i] + level * group[i]).toArray();
        double[] before = ModifiedZ.pooled(values, group).get();
        double[] after = ModifiedZ.pooled(moved, group).get();
        for (int i = 0; i < 8; i++) {
            assertThat(after[i]).isCloseTo(before[i], within(1e-7));
        }
    }

    /** Good values flagged by one reading: the rates that the documentation states. */
    @ParameterizedTest
    @CsvSource({"1, 24, 0.003, 0.008", "1, 6, 0.02, 0.036", "4, 6, 0.014, 0.024", "8, 3, 0.003, 0.009", "4, 5, 0.003, 0.009"})
    void goodValuesAreFlaggedAsOftenAsStated(int groups, int size, double least, double most) {
        Random random = new Random(5);
        int flagged = 0;
        int sets = 3000;
        int[] group = IntStream.range(0, groups * size).map(i -> i / size).toArray();
        for (int s = 0; s < sets; s++) {
            double[] values = IntStream.range(0, groups * size).mapToDouble(i -> random.nextGaussian()).toArray();
            flagged += Arrays.stream(ModifiedZ.pooled(values, group).get())
                .filter(z -> Math.abs(z) > ModifiedZ.USUAL_LIMIT).count();
        }
        assertThat(flagged / (double) sets / (groups * size)).isBetween(least, most);
    }

    private static double[][] correlatedRows(Random random, int rows) {
        double[][] readings = new double[rows][];
        for (int i = 0; i < rows; i++) {
            double common = random.nextGaussian();
            readings[i] = new double[] {100 + 3 * (0.9 * common + 0.44 * random.nextGaussian()),
                50 + (0.9 * common + 0.44 * random.nextGaussian()), 0.2 * random.nextGaussian()};
        }
        return readings;
    }

    private static final List<OutlierSide> EITHER = Collections.nCopies(3, OutlierSide.EITHER);

    @Test
    void oneReadingFarOutIsNamed() {
        double[][] readings = correlatedRows(new Random(1), 24);
        int[] group = IntStream.range(0, 24).map(i -> i % 4).toArray();
        readings[10][2] = -4;
        List<OutlierFlag> flags = OutlierScreen.USUAL.flags(readings, group, EITHER);
        OutlierFlag flag = flags.stream().filter(f -> f.row() == 10).findFirst().orElseThrow();
        assertThat(flag.cause()).isEqualTo(OutlierFlag.Cause.ONE_READING);
        assertThat(flag.column()).isEqualTo(2);
        assertThat(flag.score()).isLessThan(-3.5);
        assertThat(flag.limit()).isEqualTo(3.5);
        List<OutlierSide> highOnly = List.of(OutlierSide.EITHER, OutlierSide.EITHER, OutlierSide.HIGH);
        assertThat(OutlierScreen.USUAL.flags(readings, group, highOnly).stream().noneMatch(f -> f.row() == 10
            && f.cause() == OutlierFlag.Cause.ONE_READING)).isTrue();
    }

    @Test
    void readingsThatDoNotGoTogetherAreNamedThoughNoneIsFarOut() {
        double[][] readings = correlatedRows(new Random(2), 60);
        int[] group = new int[60];
        readings[7] = new double[] {100 + 3 * 2.6, 50 - 2.6, 0};
        OutlierFlag flag = OutlierScreen.USUAL.flags(readings, group, EITHER).stream().filter(f -> f.row() == 7)
            .findFirst().orElseThrow();
        assertThat(flag.cause()).isEqualTo(OutlierFlag.Cause.READINGS_TOGETHER);
        assertThat(flag.column()).isBetween(0, 1);
        assertThat(flag.score()).isGreaterThan(flag.limit());
    }

    @Test
    void missingReadingsCostNothingButThemselves() {
        double[][] readings = correlatedRows(new Random(3), 40);
        for (int i = 0; i < 40; i++) {
            readings[i][i % 3] = i % 2 == 0 ? NAN : readings[i][i % 3];
        }
        readings[5] = new double[] {NAN, NAN, NAN};
        readings[6] = new double[] {NAN, 50 + 30, NAN};
        List<OutlierFlag> flags = OutlierScreen.USUAL.flags(readings, new int[40], EITHER);
        assertThat(flags).anyMatch(f -> f.row() == 6 && f.column() == 1);
        assertThat(flags).noneMatch(f -> f.row() == 5);
        assertThat(flags).noneMatch(f -> Double.isNaN(f.score()));
    }

    /** By definition of the sides: the same row turned to the good side of the reading that tells it is no flag. */
    @Test
    void readingsThatDoNotGoTogetherOnTheGoodSideAreNone() {
        List<OutlierSide> low = List.of(OutlierSide.LOW, OutlierSide.LOW);
        boolean[] flagged = new boolean[2];
        for (int side = 0; side < 2; side++) {
            double[][] readings = Arrays.stream(correlatedRows(new Random(2), 200)).map(r -> Arrays.copyOf(r, 2))
                .toArray(double[][]::new);
            readings[7] = new double[] {100 + 3 * 3.1 * (side == 0 ? -1 : 1), 50};
            flagged[side] = OutlierScreen.USUAL.flags(readings, new int[200], low).stream()
                .anyMatch(f -> f.row() == 7 && f.cause() == OutlierFlag.Cause.READINGS_TOGETHER && f.column() == 0);
        }
        assertThat(flagged).containsExactly(true, false);
    }

    /** Rows without anything wrong: 4 groups of 6, three readings, two of them correlated by .8. */
    @Test
    void fewGoodRowsAreFlagged() {
        Random random = new Random(4);
        int[] group = IntStream.range(0, 24).map(i -> i / 6).toArray();
        int single = 0;
        int together = 0;
        int sets = 400;
        for (int s = 0; s < sets; s++) {
            for (OutlierFlag flag : OutlierScreen.USUAL.flags(correlatedRows(random, 24), group, EITHER)) {
                single += flag.cause() == OutlierFlag.Cause.ONE_READING ? 1 : 0;
                together += flag.cause() == OutlierFlag.Cause.READINGS_TOGETHER ? 1 : 0;
            }
        }
        assertThat(single / 24.0 / sets).isBetween(0.03, 0.07); // three readings at 1.9 % each
        assertThat(together / 24.0 / sets).isBetween(0.0, 0.02);
    }

    @Test
    void nothingIsFlaggedWhereNothingCanBeTold() {
        assertThat(OutlierScreen.USUAL.flags(new double[0][], new int[0], EITHER)).isEmpty();
        assertThat(OutlierScreen.USUAL.flags(new double[][] {{1, 2, 3}}, new int[1], EITHER)).isEmpty();
        double[][] equal = {{1, 2, 3}, {1, 2, 3}, {1, 2, 3}, {1, 2, 3}, {1, 2, 3}};
        assertThat(OutlierScreen.USUAL.flags(equal, new int[5], EITHER)).isEmpty();
        assertThat(OutlierScreen.USUAL.flags(new double[][] {{1}, {1.1}, {0.9}, {1.05}, {9}}, new int[5],
            List.of(OutlierSide.HIGH))).singleElement().matches(f -> f.row() == 4);
        assertThatThrownBy(() -> OutlierScreen.USUAL.flags(new double[][] {{1, 2}}, new int[1], EITHER))
            .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("2 readings instead of 3");
        assertThatThrownBy(() -> new OutlierScreen(0, 0.99)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new OutlierScreen(3.5, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}

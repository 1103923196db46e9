package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The classical figures against R 4.2.2 (t.test, anova, oneway.test), car and an independent range quadrature. */
class OneWayReferenceTest {

    private static final JsonNode RESULTS = ClassicalReference.json("reference_oneway.json").get("results");
    private static final double TOLERANCE = 1e-9;

    @ParameterizedTest
    @CsvSource({"plantgrowth, plantgrowth.csv, weight, group", "insectsprays, insectsprays.csv, count, spray",
        "chickwts, chickwts.csv, weight, feed", "warpbreaks_tension, warpbreaks.csv, breaks, tension",
        "iris_sepal_width, iris.csv, Sepal.Width, Species", "sleep, sleep_student1908.csv, extra, group",
        "morley, morley.csv, Speed, Expt"})
    void matches(String name, String file, String value, String group) {
        GroupedData data = GroupedData.read(file, value, group);
        JsonNode expected = RESULTS.get(name);
        checkSummaries(data, expected.get("groups"));
        checkOmnibus(data, expected.get("omnibus"));
        checkTwoSamples(data, expected.get("two_sample"));
        checkTukeyKramer(data, expected.get("tukey_kramer"));
        checkGamesHowell(data, expected.get("games_howell"));
    }

    private static void checkSummaries(GroupedData data, JsonNode expected) {
        assertThat(expected).hasSize(data.labels().size());
        for (String label : data.labels()) {
            SampleSummary summary = SampleSummary.of(data.group(label), 0.95);
            JsonNode row = expected.get(label);
            assertThat(summary.count()).isEqualTo(row.get("n").asInt());
            close(summary.mean().get(), row.get("mean"), label);
            close(summary.standardDeviation().get(), row.get("sd"), label);
            close(summary.median().get(), row.get("median"), label);
        }
    }

    private static void checkOmnibus(GroupedData data, JsonNode expected) {
        VarianceTable table = EqualMeansTest.oneWay(data.groups()).get();
        JsonNode anova = expected.get("anova");
        close(table.sumOfSquaresBetween(), anova.get("ss_between"), "between");
        close(table.sumOfSquaresWithin(), anova.get("ss_within"), "within");
        close(table.meanSquareBetween(), anova.get("ms_between"), "between");
        close(table.meanSquareWithin(), anova.get("ms_within"), "within");
        checkF(table.test(), anova);
        checkF(EqualMeansTest.welch(data.groups()).get(), expected.get("welch_anova"));
        checkF(EqualMeansTest.brownForsythe(data.groups()).get(), expected.get("brown_forsythe_means_Fstar"));
        checkF(EqualVariancesTest.brownForsythe(data.groups()).get(),
            expected.get("brown_forsythe_variances_median_levene"));
        checkF(EqualVariancesTest.levene(data.groups()).get(), expected.get("levene_mean"));
    }

    private static void checkF(FTest test, JsonNode expected) {
        close(test.statistic(), expected.get("F"), "F");
        close(test.numerator(), expected.get("df1"), "df1");
        close(test.denominator(), expected.get("df2"), "df2");
        close(test.pValue(), expected.get("p"), "p");
    }

    private static void checkTwoSamples(GroupedData data, JsonNode expected) {
        for (JsonNode row : expected) {
            double[] a = data.group(row.get("a").asText());
            double[] b = data.group(row.get("b").asText());
            checkMeanDifference(MeanDifference.welch(a, b, 0.95).get(), row.get("welch"));
            checkMeanDifference(MeanDifference.pooled(a, b, 0.95).get(), row.get("pooled_two_sample"));
        }
    }

    private static void checkMeanDifference(MeanDifference actual, JsonNode expected) {
        close(actual.difference(), expected.get("diff"), "difference");
        close(actual.standardError(), expected.get("se"), "standard error");
        close(actual.statistic(), expected.get("t"), "t");
        close(actual.degreesOfFreedom(), expected.get("df"), "df");
        close(actual.pValue(), expected.get("p"), "p");
        close(actual.interval().lower(), expected.get("lo"), "lower");
        close(actual.interval().upper(), expected.get("hi"), "upper");
    }

    private static void checkTukeyKramer(GroupedData data, JsonNode expected) {
        var pairs = AllPairs.tukeyKramer(data.groups(), 0.95).get();
        assertThat(pairs).hasSize(expected.size());
        for (JsonNode row : expected) {
            checkPair(data, row, pairs.stream().filter(p -> isPair(data, row, p)).findFirst().orElseThrow());
        }
    }

    private static void checkGamesHowell(GroupedData data, JsonNode expected) {
        var pairs = AllPairs.gamesHowell(data.groups(), 0.95);
        assertThat(pairs).hasSize(expected.size());
        for (JsonNode row : expected) {
            PairComparison pair = pairs.stream().map(Figure::get).filter(p -> isPair(data, row, p)).findFirst()
                .orElseThrow();
            checkPair(data, row, pair);
            close(pair.standardError(), row.get("se_diff"), "standard error");
        }
    }

    private static boolean isPair(GroupedData data, JsonNode row, PairComparison pair) {
        String first = data.labels().get(pair.first());
        String second = data.labels().get(pair.second());
        String a = row.get("a").asText();
        String b = row.get("b").asText();
        return first.equals(a) && second.equals(b) || first.equals(b) && second.equals(a);
    }

    private static void checkPair(GroupedData data, JsonNode row, PairComparison pair) {
        double sign = data.labels().get(pair.first()).equals(row.get("a").asText()) ? 1 : -1;
        close(sign * pair.difference(), row.get("diff"), "difference");
        close(pair.rangeStatistic(), row.get("q"), "q");
        close(pair.degreesOfFreedom(), row.get("df"), "df");
        double p = row.get("p_hp").asDouble();
        assertThat(pair.pValue()).as(row.toString()).isCloseTo(p, within(1e-6 * p + 1e-13));
        assertThat(sign > 0 ? pair.interval().lower() : -pair.interval().upper())
            .isCloseTo(row.get("lo").asDouble(), within(1e-8 * Math.abs(row.get("lo").asDouble()) + 1e-9));
        assertThat(sign > 0 ? pair.interval().upper() : -pair.interval().lower())
            .isCloseTo(row.get("hi").asDouble(), within(1e-8 * Math.abs(row.get("hi").asDouble()) + 1e-9));
    }

    private static void close(double actual, JsonNode expected, String what) {
        double value = expected.asDouble();
        assertThat(actual).as(what).isCloseTo(value, within(TOLERANCE * Math.abs(value) + 1e-300));
    }
}

package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** Against R 4.2.2's pt, qt, pf, qf, pchisq, qchisq (reference_distributions.json). */
class DistributionsTest {

    private static final JsonNode REFERENCE = ClassicalReference.json("reference_distributions.json");

    @Test
    void studentsTMatchesR() {
        for (JsonNode row : REFERENCE.get("pt")) {
            close(Distributions.tUpper(row.get("t").asDouble(), row.get("df").asDouble()), row.get("sf").asDouble(), row);
        }
        for (JsonNode row : REFERENCE.get("qt")) {
            close(Distributions.tQuantile(row.get("p").asDouble(), row.get("df").asDouble()), row.get("q").asDouble(), row);
        }
    }

    @Test
    void fMatchesR() {
        for (JsonNode row : REFERENCE.get("pf")) {
            close(Distributions.fUpper(row.get("F").asDouble(), row.get("df1").asDouble(), row.get("df2").asDouble()),
                row.get("sf").asDouble(), row);
        }
        for (JsonNode row : REFERENCE.get("qf")) {
            double p = row.get("p").asDouble();
            double denominator = row.get("df2").asDouble();
            close(Distributions.fQuantile(p, row.get("df1").asDouble(), denominator), row.get("q").asDouble(), row);
            if (row.get("df1").asInt() == 2) {
                close(Distributions.fQuantileTwo(p, denominator), row.get("q").asDouble(), row);
            }
        }
    }

    @Test
    void chiSquaredMatchesR() {
        for (JsonNode row : REFERENCE.get("pchisq")) {
            close(Distributions.chiSquareUpper(row.get("x").asDouble(), row.get("df").asDouble()),
                row.get("sf").asDouble(), row);
        }
        for (JsonNode row : REFERENCE.get("qchisq")) {
            close(Distributions.chiSquareQuantile(row.get("p").asDouble(), 2), row.get("df2").asDouble(), row);
        }
    }

    @Test
    void confidenceOutsideItsRangeIsRefused() {
        for (double nonsense : new double[] {0, 1, -0.5, 95, Double.NaN}) {
            assertThatThrownBy(() -> Distributions.requireConfidence(nonsense))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("between 0 and 1");
        }
    }

    private static void close(double actual, double expected, JsonNode row) {
        assertThat(actual).as(row.toString()).isCloseTo(expected, within(1e-9 * Math.abs(expected) + 1e-300));
    }
}

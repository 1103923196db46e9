package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Restricted maximum likelihood against R, see reference/MIXED-PROVENANCE.md, and against printed values. */
class RemlReferenceTest {

    private static final JsonNode REFERENCE = MixedReference.json("reference_mixed.json").get("results");

    @ParameterizedTest
    @ValueSource(strings = {"dyestuff", "dyestuff2", "rail", "ergostool", "penicillin", "machines_worker",
        "machines_nested", "cake_nested", "sleepstudy_days", "warpbreaks_nested"})
    void agreesWithTheScoreRootInR(String name) {
        MixedReference.Sample sample = MixedReference.sample(name);
        RemlFit fit = fit(sample);
        JsonNode expected = REFERENCE.get(name).get("refined");

        close(fit.blockStandardDeviation(), expected.get("sigma_b"), 1e-9);
        close(fit.residualStandardDeviation(), expected.get("sigma"), 1e-9);
        close(fit.criterion(), expected.get("reml_criterion"), 1e-10);
        assertThat(fit.isBoundary()).isEqualTo(expected.get("boundary").asBoolean());
        assertThat(fit.interiorMaxima()).isEqualTo(expected.get("n_interior_maxima").asInt());
        List<String> names = sample.groupNames();
        for (int g = 0; g < names.size(); g++) {
            compare(fit.mean(g), expected.get("fixed").get(names.get(g)));
        }
        if (fit.hasDrift()) {
            compare(fit.drift(), expected.get("fixed").get("drift"));
        }
        for (JsonNode pair : expected.get("pairs")) {
            compare(fit.difference(names.indexOf(pair.get("a").asText()), names.indexOf(pair.get("b").asText())), pair);
        }
    }

    /** The packages are limited by their optimisers: about 4e-7. */
    @ParameterizedTest
    @ValueSource(strings = {"dyestuff", "rail", "ergostool", "penicillin", "machines_worker", "machines_nested",
        "cake_nested", "sleepstudy_days", "warpbreaks_nested"})
    void agreesWithThePackages(String name) {
        MixedReference.Sample sample = MixedReference.sample(name);
        RemlFit fit = fit(sample);
        JsonNode expected = REFERENCE.get(name).get("lmer");

        close(fit.blockStandardDeviation(), expected.get("sigma_b"), 1e-6);
        close(fit.residualStandardDeviation(), expected.get("sigma"), 1e-6);
        close(fit.blockStandardDeviation(), REFERENCE.get(name).get("nlme_lme").get("sigma_b_full"), 1e-6);
        for (int g = 0; g < sample.groupNames().size(); g++) {
            JsonNode fixed = expected.get("fixed").get(sample.groupNames().get(g));
            close(fit.mean(g).satterthwaiteDegrees(), fixed.get("satt_df"), 1e-6);
            close(fit.mean(g).kenwardRogerDegrees(), fixed.get("kr_df"), 1e-6);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"machines_nested", "ergostool"})
    void familyAdjustedPairsAgreeWithEmmeans(String name) {
        MixedReference.Sample sample = MixedReference.sample(name);
        RemlFit fit = fit(sample);
        List<String> names = sample.groupNames();
        JsonNode contrasts = REFERENCE.get(name).get("emmeans_kr_tukey").get("contrasts_tukey");

        assertThat(contrasts).isNotEmpty();
        for (JsonNode contrast : contrasts) {
            String[] pair = contrast.get("contrast").asText().split(" - ");
            RemlEstimate difference = fit.difference(names.indexOf(pair[0]), names.indexOf(pair[1]));
            close(difference.estimate(), contrast.get("estimate"), 1e-6);
            close(difference.kenwardRogerDegrees(), contrast.get("df"), 1e-6);
            // R's studentized range is good to about 1e-6 at these degrees of freedom
            assertThat(difference.kenwardRogerFamilyP(names.size()))
                .isCloseTo(contrast.get("p.value").asDouble(), within(2e-6));
        }
    }

    /**
     * Davies and Goldsmith (1972), analysed by Box and Tiao (1973), section 5.1: the variances follow from the mean squares
     * of the balanced layout, (11271.5 - 2451.25)/5 and 2451.25.
     */
    @Test
    void dyestuffGivesTheClosedFormOfABalancedLayout() {
        RemlFit fit = fit(MixedReference.sample("dyestuff"));

        assertThat(Math.pow(fit.blockStandardDeviation(), 2)).isCloseTo((11271.5 - 2451.25) / 5, within(1e-6));
        assertThat(Math.pow(fit.residualStandardDeviation(), 2)).isCloseTo(2451.25, within(1e-7));
        assertThat(fit.mean(0).estimate()).isCloseTo(1527.5, within(1e-9));
        assertThat(fit.mean(0).standardError()).isCloseTo(19.383, within(5e-4));
        assertThat(fit.criterion()).isCloseTo(319.6542768422576, within(1e-9));
        assertThat(fit.isBoundary()).isFalse();
    }

    /** Box and Tiao (1973), section 5.1.2, as printed by Bates (from memory, repeated by calculation in R). */
    @Test
    void dyestuff2LiesOnTheBoundary() {
        RemlFit fit = fit(MixedReference.sample("dyestuff2"));

        assertThat(fit.isBoundary()).isTrue();
        assertThat(fit.blockStandardDeviation()).isZero();
        assertThat(Math.pow(fit.residualStandardDeviation(), 2)).isCloseTo(13.806, within(5e-4));
        assertThat(fit.mean(0).estimate()).isCloseTo(5.6656, within(1e-10));
    }

    /** Belenky and others (2003); printed in the examples of lme4 and lmerTest (from memory, repeated in R). */
    @Test
    void sleepstudyGivesThePrintedSlope() {
        RemlFit fit = fit(MixedReference.sample("sleepstudy_days"));

        assertThat(fit.blockStandardDeviation()).isCloseTo(37.124, within(5e-4));
        assertThat(fit.residualStandardDeviation()).isCloseTo(30.991, within(5e-4));
        assertThat(fit.drift().estimate()).isCloseTo(10.4673, within(5e-5));
        assertThat(fit.drift().standardError()).isCloseTo(0.8042, within(5e-5));
        assertThat(fit.criterion()).isCloseTo(1786.465, within(5e-4));
    }

    /** Pinheiro and Bates (2000), Mixed-Effects Models in S and S-PLUS, section 1.1. */
    @Test
    void railGivesThePrintedDeviations() {
        RemlFit fit = fit(MixedReference.sample("rail"));

        assertThat(fit.blockStandardDeviation()).isCloseTo(24.80547, within(5e-6));
        assertThat(fit.residualStandardDeviation()).isCloseTo(4.020779, within(5e-7));
        assertThat(fit.mean(0).estimate()).isCloseTo(66.5, within(1e-10));
        assertThat(fit.mean(0).standardError()).isCloseTo(10.17104, within(5e-6));
    }

    private static RemlFit fit(MixedReference.Sample sample) {
        return MixedModelFitter.withDefaults()
            .fit(sample.response(), sample.group(), sample.covariate(), sample.block())
            .reml(sample.covariate() != null);
    }

    private static void compare(RemlEstimate estimate, JsonNode expected) {
        // An estimated difference of nearly 0 is good to rounding of the means, not of itself.
        assertThat(estimate.estimate()).isCloseTo(expected.get("est").asDouble(),
            within(1e-9 * Math.max(1, Math.abs(expected.get("est").asDouble()))));
        close(estimate.standardError(), expected.get("se"), 1e-9);
        close(estimate.satterthwaiteDegrees(), expected.get("satt_df"), 1e-7);
        close(estimate.satterthwaiteP(), expected.get("satt_p"), 1e-6);
        close(estimate.satterthwaiteInterval(0.95).lower(), expected.get("satt_lo"), 1e-7);
        close(estimate.kenwardRogerStandardError(), expected.get("kr_se"), 1e-9);
        close(estimate.kenwardRogerDegrees(), expected.get("kr_df"), 1e-7);
        close(estimate.kenwardRogerP(), expected.get("kr_p"), 1e-6);
        close(estimate.kenwardRogerInterval(0.95).upper(), expected.get("kr_hi"), 1e-7);
    }

    private static void close(double actual, JsonNode expected, double relative) {
        double value = expected.asDouble();
        assertThat(actual).isCloseTo(value, Offset.offset(Math.max(1e-300, relative * Math.abs(value))));
    }
}

package gripwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What must hold for any session: units, labels and order of writing down must not matter. */
class MixedModelProperties {

    private static final MixedModelFitter FITTER = MixedModelFitter.withDefaults();

    @Provide
    Arbitrary<SimulatedSession> sessions() {
        Arbitrary<Integer> groups = Arbitraries.integers().between(2, 5);
        return groups.flatMap(k -> Combinators.combine(
            Arbitraries.integers().between(0, k - 1).array(int[].class).ofMinSize(3).ofMaxSize(9),
            Arbitraries.integers().between(1, 7).array(int[].class).ofSize(9),
            Arbitraries.doubles().between(-3, 3).array(double[].class).ofSize(k),
            Arbitraries.longs())
            .as((plan, sizes, means, seed) -> SimulatedSession.of(plan, java.util.Arrays.copyOf(sizes, plan.length),
                means, 1, 0.4, seed)));
    }

    @Property(tries = 100)
    void shiftAndScaleOfTheResponse(@ForAll("sessions") SimulatedSession session,
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double shift, @ForAll @DoubleRange(min = 1e-3, max = 1e3) @Scale(4) double unit) {
        MixedModelFit fit = session.fit(FITTER);
        double[] moved = java.util.Arrays.stream(session.response()).map(y -> shift + unit * y).toArray();
        MixedModelFit other = FITTER.fit(moved, session.group(), session.order(), session.block());

        assertThat(other.isAvailable()).isEqualTo(fit.isAvailable());
        if (!fit.isAvailable()) {
            return;
        }
        int first = session.group()[0];
        double tolerance = 1e-6 + 1e-10 * Math.abs(shift) / unit;
        assertThat((other.mean(first).estimate() - shift) / unit).isCloseTo(fit.mean(first).estimate(), within(tolerance));
        assertThat(other.blockRatio().estimate()).isCloseTo(fit.blockRatio().estimate(), within(tolerance));
        assertThat(other.residualStandardDeviation().median() / unit)
            .isCloseTo(fit.residualStandardDeviation().median(), within(tolerance));
        assertThat(other.mean(first).probabilityAbove(shift + 0.3 * unit))
            .isCloseTo(fit.mean(first).probabilityAbove(0.3), within(tolerance));
    }

    @Property(tries = 100)
    void relabelledBlocksAndGroups(@ForAll("sessions") SimulatedSession session, @ForAll @IntRange(min = 1, max = 1000) int step) {
        int groups = java.util.Arrays.stream(session.group()).max().orElseThrow() + 1;
        MixedModelFit fit = FITTER.fit(session.response(), session.group(), session.order(), session.block(), groups);
        int[] blocks = java.util.Arrays.stream(session.block()).map(j -> 77_000 - step * j).toArray();
        int[] turned = java.util.Arrays.stream(session.group()).map(g -> groups - 1 - g).toArray();
        MixedModelFit other = FITTER.fit(session.response(), turned, session.order(), blocks, groups);

        assertThat(other.notIdentified()).isEqualTo(fit.notIdentified());
        for (int a = 0; a < groups && fit.isAvailable(); a++) {
            for (int b = 0; b < groups; b++) {
                if (a != b && fit.hasValues(a) && fit.hasValues(b)) {
                    ContrastPosterior here = fit.difference(a, b);
                    ContrastPosterior there = other.difference(groups - 1 - a, groups - 1 - b);
                    assertThat(there.probabilityAbove(0.2)).isCloseTo(here.probabilityAbove(0.2), within(1e-8));
                    assertThat(there.familyProbabilityAbove(0.2))
                        .isCloseTo(here.familyProbabilityAbove(0.2), within(1e-8));
                }
            }
        }
    }

    @Property(tries = 100)
    void signsAndFamilies(@ForAll("sessions") SimulatedSession session, @ForAll @DoubleRange(min = 0, max = 3) double limit) {
        MixedModelFit fit = session.fit(FITTER);
        int a = session.group()[0];
        int b = session.group()[session.group().length - 1];
        if (!fit.isAvailable() || a == b) {
            return;
        }
        ContrastPosterior there = fit.difference(a, b);
        ContrastPosterior back = fit.difference(b, a);
        assertThat(back.estimate()).isCloseTo(-there.estimate(), within(1e-9));
        assertThat(back.probabilityBelow(-limit)).isCloseTo(there.probabilityAbove(limit), within(1e-9));
        assertThat(back.familyProbabilityBelow(-limit)).isCloseTo(there.familyProbabilityAbove(limit), within(1e-9));
        assertThat(there.probabilityAbove(limit) + there.probabilityBelow(limit)).isCloseTo(1, within(1e-9));
        assertThat(there.interval(0.95).lower()).isCloseTo(-back.interval(0.95).upper(), within(1e-7));
        // Adjusted probabilities lie nearer to one half; the single pair of a family of two is not adjusted.
        double plain = there.probabilityAbove(0);
        double adjusted = there.familyProbabilityAbove(0);
        if (plain > 0.9) {
            assertThat(adjusted).isLessThanOrEqualTo(plain + 1e-8);
        }
    }

    @Property(tries = 100)
    void intervalsHoldTheirProbability(@ForAll("sessions") SimulatedSession session,
            @ForAll @DoubleRange(min = 0.5, max = 0.99) double level) {
        MixedModelFit fit = session.fit(FITTER.with(GroupPrior.EXCHANGEABLE));
        if (!fit.isAvailable()) {
            return;
        }
        ContrastPosterior mean = fit.mean(session.group()[0]);
        Interval interval = mean.interval(level);
        assertThat(mean.probabilityBelow(interval.lower())).isCloseTo((1 - level) / 2, within(1e-8));
        assertThat(mean.probabilityAbove(interval.upper())).isCloseTo((1 - level) / 2, within(1e-8));
        Interval tau = fit.blockRatio().interval(level);
        assertThat(tau.lower()).isNotNegative().isLessThan(tau.upper());
    }
}

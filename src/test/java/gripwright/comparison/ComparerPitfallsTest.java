package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.ClubKind;
import gripwright.model.Diameter;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Every pitfall has a sentence, and none a NaN. */
class ComparerPitfallsTest {

    private static final Goal FASTER = Goal.open().withPrimaries(List.of(
            PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER),
            PrimaryMetric.mean(Metric.FACE_ANGLE, Direction.NEAR_TARGET)));

    private static Comparison compare(Session session) {
        Comparison comparison = Comparer.withSettings(ShopSettings.usual()).compareAll(session).get(0);
        assertThat(NoNanAnywhere.places(comparison)).isEmpty();
        for (MetricComparison metric : comparison.metrics()) {
            for (Difference difference : metric.differences()) {
                assertThat(difference.reasons()).isNotEmpty();
            }
        }
        return comparison;
    }

    private static MetricComparison speed(Comparison comparison) {
        return comparison.metric(Metric.CLUB_SPEED).orElseThrow();
    }

    @Test
    void noConfiguration() {
        Comparison comparison = compare(SessionBuilder.of().goal(FASTER).build());
        assertThat(comparison.referenceId()).isNull();
        assertThat(comparison.advice().configurationId()).isNull();
        assertThat(comparison.advice().headline()).contains("nothing to advise on");
    }

    @Test
    void noShot() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER).build());
        assertThat(comparison.metrics()).isEmpty();
        assertThat(comparison.sentences()).anyMatch(s -> s.startsWith("No shot has been scored yet"));
        assertThat(comparison.advice().keepsGamer()).isTrue();
        assertThat(comparison.advice().reasons()).anyMatch(s -> s.contains("too little was read yet"));
    }

    @Test
    void oneShotOfOneConfiguration() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38).build());
        assertThat(speed(comparison).model().notIdentified()).contains(NotIdentifiedPart.TOO_FEW_SHOTS);
        assertThat(speed(comparison).configuration("id-A").orElseThrow().mean()).isEqualTo(38);
        assertThat(speed(comparison).configuration("id-A").orElseThrow().interval()).isNull();
        Difference difference = speed(comparison).difference("id-B", "id-A").orElseThrow();
        assertThat(difference.estimate()).isNull();
        assertThat(difference.verdict()).isEqualTo(Verdict.NOT_SETTLED);
        assertThat(difference.reasons()).containsExactly("B has no reading of club speed.");
    }

    @Test
    void oneShotEach() {
        Comparison comparison = compare(SessionBuilder.of("A", "B", "C").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38).stint("B", Metric.CLUB_SPEED, 39)
                .stint("C", Metric.CLUB_SPEED, 37.5).build());
        Difference difference = speed(comparison).difference("id-B", "id-A").orElseThrow();
        assertThat(difference.estimate()).isEqualTo(1);
        assertThat(difference.interval()).isNull();
        assertThat(difference.verdict()).isEqualTo(Verdict.NOT_SETTLED);
        assertThat(difference.leaning()).isEqualTo(Leaning.NONE);
        assertThat(difference.reasons()).anyMatch(r -> r.startsWith("Too few shots"));
        assertThat(speed(comparison).sentences()).anyMatch(r -> r.startsWith("Too few shots"));
        assertThat(comparison.advice().headline()).contains("too little was hit");
    }

    @Test
    void threeShots() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.4).stint("B", Metric.CLUB_SPEED, 39).build());
        Difference difference = speed(comparison).difference("id-B", "id-A").orElseThrow();
        assertThat(difference.verdict()).isEqualTo(Verdict.NOT_SETTLED);
        assertThat(difference.reasons()).anyMatch(r -> r.equals("Only 1 shot of B."));
    }

    @Test
    void oneConfiguration() {
        Comparison comparison = compare(SessionBuilder.of("A").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.4, 37.9, 38.2).build());
        assertThat(speed(comparison).differences()).isEmpty();
        assertThat(speed(comparison).model().isAvailable()).isTrue();
        assertThat(comparison.advice().headline()).contains("nothing to choose between");
    }

    @Test
    void allReadingsEqual() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38, 38).stint("B", Metric.CLUB_SPEED, 38, 38, 38).build());
        assertThat(speed(comparison).model().notIdentified()).contains(NotIdentifiedPart.ALL_EQUAL);
        Difference difference = speed(comparison).difference("id-B", "id-A").orElseThrow();
        assertThat(difference.estimate()).isZero();
        assertThat(difference.reasons()).anyMatch(r -> r.startsWith("All readings are the same number"));
    }

    @Test
    void noVariationWithinStints() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38, 38).stint("B", Metric.CLUB_SPEED, 39, 39, 39)
                .stint("A", Metric.CLUB_SPEED, 38.5, 38.5, 38.5).build());
        assertThat(speed(comparison).model().notIdentified()).contains(NotIdentifiedPart.NO_VARIATION_IN_STINTS);
    }

    @Test
    void configurationWithoutThisReading() {
        Comparison comparison = compare(SessionBuilder.of("A", "B", "C").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7, 38.1)
                .stint("B", Metric.CLUB_SPEED, 39, 38.6, 39.1, 38.8)
                .stint("C", Metric.FACE_ANGLE, 1, 2, 0.5, -1).build());
        assertThat(speed(comparison).sentences()).contains("No reading of club speed for C.");
        assertThat(speed(comparison).difference("id-C", "id-A").orElseThrow().reasons())
                .containsExactly("C has no reading of club speed.");
        assertThat(speed(comparison).difference("id-B", "id-A").orElseThrow().interval()).isNotNull();
        assertThat(comparison.metric(Metric.FACE_ANGLE).orElseThrow().configuration("id-A").orElseThrow().mean())
                .isNull();
    }

    @Test
    void driftFullyConfounded() {
        Comparison comparison = compare(SessionBuilder.of("A", "B", "C").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7, 38.1)
                .stint("B", Metric.CLUB_SPEED, 38.5, 38.9, 38.2, 38.8)
                .stint("C", Metric.CLUB_SPEED, 39, 38.9, 39.4, 39.2).build());
        assertThat(speed(comparison).model().notIdentified()).contains(NotIdentifiedPart.STINT_VARIATION);
        assertThat(speed(comparison).difference("id-C", "id-A").orElseThrow().reasons())
                .anyMatch(r -> r.equals("C and A were hit in one stint only each; what was the stint and what the grip "
                        + "can't be told apart."));
        Comparison single = compare(SessionBuilder.of("A", "B").goal(FASTER).stint("A", Metric.CLUB_SPEED, 38)
                .stint("B", Metric.CLUB_SPEED, 38.5).stint("A", Metric.CLUB_SPEED, 38.4).build());
        assertThat(speed(single).model().notIdentified()).contains(NotIdentifiedPart.STINT_VARIATION);
    }

    @Test
    void eightGripsInOneStintEachForALeftHandedPlayerWithMissingReadings() {
        Random random = new Random(8);
        SessionBuilder builder = SessionBuilder.of("A", "B", "C", "D", "E", "F", "G", "H").goal(FASTER
                .withGuardrails(List.of(Guardrail.mean(Metric.CARRY, Direction.HIGHER, null, 2))))
                .hand(gripwright.model.Handedness.LEFT);
        for (String label : "ABCDEFGH".split("")) {
            List<Readings> readings = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                Readings one = Readings.none();
                for (Metric metric : Metric.values()) {
                    if (random.nextInt(4) > 0) {
                        one = one.with(metric, metric.sensibleLow()
                                + (metric.sensibleHigh() - metric.sensibleLow()) * random.nextDouble());
                    }
                }
                readings.add(one);
            }
            builder.stint(label, readings);
        }
        Comparison comparison = compare(builder.build());
        assertThat(comparison.metrics()).hasSize(Metric.values().length);
        assertThat(speed(comparison).differences()).hasSize(28);
        assertThat(comparison.overall()).hasSize(8);
        assertThat(comparison.overall().stream().mapToDouble(s -> s.probabilityBest()).sum())
                .isBetween(0.999, 1.001);
    }

    @Test
    void twoThousandShots() {
        Random random = new Random(3);
        SessionBuilder builder = SessionBuilder.of("A", "B").goal(FASTER);
        for (int j = 0; j < 20; j++) {
            double[] values = random.doubles(100, 37, 39).toArray();
            builder.stint(j % 2 == 0 ? "A" : "B", Metric.CLUB_SPEED, values);
        }
        Difference difference = speed(compare(builder.build())).difference("id-B", "id-A").orElseThrow();
        assertThat(difference.verdict()).isEqualTo(Verdict.SAME);
        assertThat(difference.reasons().get(0)).contains("either way");
    }

    @Test
    void settlingSwingsWarmUpAndSetAsideShotsAreNotScoredButCountAsSwings() {
        Session session = SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 30, 31, 32).last(s -> s.withKind(Stint.Kind.WARM_UP))
                .stint("A", Metric.CLUB_SPEED, 33, 38, 38.3, 37.7).last(s -> s.withSettlingSwings(1))
                .stint("B", Metric.CLUB_SPEED, 20, 39, 38.6, 39.1).aside(1).build();
        Comparison comparison = compare(session);
        ComparedConfiguration first = comparison.configurations().get(0);
        assertThat(first.swings()).isEqualTo(7);
        assertThat(first.scored()).isEqualTo(3);
        assertThat(first.stints()).isEqualTo(1);
        assertThat(comparison.configurations().get(1).setAside()).isEqualTo(1);
        assertThat(speed(comparison).configuration("id-A").orElseThrow().mean()).isBetween(37.9, 38.1);
        MishitRate rate = comparison.mishitRates().get(1);
        assertThat(rate.rate().value()).isEqualTo(0.25);
        // Jeffreys' limits of 1 in 4, R 4.2.2: qbeta(c(.025, .975), 1.5, 3.5) = 0.0284709 0.7162483
        assertThat(rate.rate().interval().low()).isCloseTo(0.0284709, within(1e-6));
        assertThat(rate.rate().interval().high()).isCloseTo(0.7162483, within(1e-6));
        assertThat(PlayedTest.of(session.tests().get(0)).swings()).isEqualTo(11);
    }

    @Test
    void aShotSetAsideInTheWarmUpOrWhileSettlingIsNoMishitOfTheTest() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 30, 31, 32).aside(2).last(s -> s.withKind(Stint.Kind.WARM_UP))
                .stint("A", Metric.CLUB_SPEED, 33, 38, 38.3, 37.7).aside(1).last(s -> s.withSettlingSwings(1))
                .stint("B", Metric.CLUB_SPEED, 39, 38.6, 39.1).build());
        MishitRate rate = comparison.mishitRates().get(0);
        assertThat(rate.shots()).isEqualTo(3);
        assertThat(rate.setAside()).isZero();
        assertThat(comparison.configurations().get(0).setAside()).isZero();
    }

    @Test
    void setAsideShotsSayWhatTheVerdictWouldBeWithThem() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7, 38.1)
                .stint("B", Metric.CLUB_SPEED, 30, 38.6, 39.1, 38.8).aside(1)
                .stint("A", Metric.CLUB_SPEED, 38.2, 38.3, 37.9).build());
        assertThat(speed(comparison).difference("id-B", "id-A").orElseThrow().reasons())
                .anyMatch(r -> r.startsWith("One shot of these two set aside; with it the verdict would be"));
    }

    @Test
    void stintsInARowWithoutAChangeAreOne() {
        SessionBuilder builder = SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7)
                .stint("B", Metric.CLUB_SPEED, 38.6, 39.1, 38.8)
                .stint("B", Metric.CLUB_SPEED, 38.9, 39.0, 38.7);
        assertThat(speed(compare(builder.build())).configuration("id-B").orElseThrow().stints()).isEqualTo(2);
        builder.last(s -> s.withChangedBefore(false));
        assertThat(speed(compare(builder.build())).configuration("id-B").orElseThrow().stints()).isEqualTo(1);
    }

    @Test
    void rehearsalShotsNeverMeetRealOnes() {
        SessionBuilder builder = SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.7)
                .stint("B", Metric.CLUB_SPEED, 50, 51, 52).last(ComparerPitfallsTest::rehearsed);
        Comparison mixed = compare(builder.build());
        assertThat(mixed.sentences()).contains("3 rehearsal shots are left out of the comparison.");
        assertThat(speed(mixed).configuration("id-B").orElseThrow().shots()).isZero();
        Comparison only = compare(SessionBuilder.of("A", "B").stint("B", Metric.CLUB_SPEED, 50, 51, 52)
                .last(ComparerPitfallsTest::rehearsed).build());
        assertThat(speed(only).configuration("id-B").orElseThrow().shots()).isEqualTo(3);
    }

    /** Carries of 140 and of 180 or 100 m: only a scored shot that falls short is asked about. */
    @Test
    void flagsAreForScoredShotsThatFallShort() {
        Session session = SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CARRY, 100, 140, 141).last(s -> s.withKind(Stint.Kind.WARM_UP))
                .stint("A", Metric.CARRY, 100, 139, 140, 141, 140.5, 139.5, 138.8).last(s -> s.withSettlingSwings(1))
                .stint("B", Metric.CARRY, 140, 180, 141, 139.2, 140.3, 100, 101).aside(7).build();
        Comparison comparison = compare(session);
        String shortOne = session.tests().get(0).stints().get(2).shots().get(5).id();
        assertThat(comparison.flags()).extracting(MishitFlag::shotId).containsExactly(shortOne);
    }

    /** Means of a parabola with its lowest place at 23.4 mm, so that the best size is there where lower serves. */
    @Test
    void theBestSizeIsTheValleyWhereLowerServes() {
        double[] sizes = {22.4, 22.9, 23.4, 23.9, 24.4};
        for (Direction direction : new Direction[] {Direction.LOWER, Direction.HIGHER}) {
            SessionBuilder builder = SessionBuilder.of("A", "B", "C", "D", "E").goal(Goal.open().withPrimaries(
                    List.of(PrimaryMetric.mean(Metric.SPIN_RATE, direction))));
            for (int k = 0; k < sizes.length; k++) {
                double size = sizes[k];
                builder.configuration("ABCDE".substring(k, k + 1), c -> c.withFittedDiameters(
                        List.of(new Diameter(50.8, size), new Diameter(152.4, size - 2))));
            }
            for (int stint = 0; stint < 10; stint++) {
                double off = sizes[stint % 5] - 23.4;
                double mean = 6000 + 2000 * off * off;
                builder.stint("ABCDE".substring(stint % 5, stint % 5 + 1), Metric.SPIN_RATE, mean - 9, mean + 12, mean - 3, mean);
            }
            SizeResponse response = compare(builder.build()).sizeResponses().stream()
                    .filter(r -> r.place() == SizeResponse.Place.UPPER_HAND).findFirst().orElseThrow();
            assertThat(response.curvature().value()).isCloseTo(4000, within(40.0));
            if (direction == Direction.LOWER) {
                assertThat(response.bestDiameterMm()).isCloseTo(23.4, within(0.02));
            } else {
                assertThat(response.bestDiameterMm()).isNull();
            }
        }
    }

    /** 15 yd with the long clubs and 10 yd with the others: common practice, no source; a yard is 0.9144 m by definition. */
    @Test
    void aMissBeginsFurtherOutWithLongClubs() {
        for (ClubKind kind : ClubKind.values()) {
            Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER).kind(kind)
                    .stint("A", Metric.OFFLINE, 1, -3, 4).stint("B", List.of(Readings.of(Metric.OFFLINE, 2).with(Metric.CARRY, 140),
                            Readings.of(Metric.OFFLINE, -4).with(Metric.CARRY, 141), Readings.of(Metric.OFFLINE, 5).with(Metric.CARRY, 138)))
                    .build());
            double yards = kind == ClubKind.DRIVER || kind == ClubKind.FAIRWAY_WOOD ? 15 : 10;
            assertThat(comparison.patterns().get(0).misses().get(0).distance()).isCloseTo(yards * 0.9144, within(1e-9));
        }
    }

    /**
     * Stints of one grip that lie ten times the noise apart, and such that don't: the flag is for a stint effect beyond
     * what nine of ten sessions have under the shop's prior, our judgement.
     */
    @Test
    void stintsThatVaryMoreThanThePriorAllowsForAreReported() {
        for (double apart : new double[] {0, 3}) {
            SessionBuilder builder = SessionBuilder.of("A", "B").goal(FASTER);
            for (int stint = 0; stint < 8; stint++) {
                double level = 38 + apart * (stint * 5 % 8 / 8.0 - 0.5);
                builder.stint(stint % 2 == 0 ? "A" : "B", Metric.CLUB_SPEED, level - 0.3, level + 0.2, level + 0.4, level - 0.2, level);
            }
            assertThat(speed(compare(builder.build())).model().stintPriorStrained()).isEqualTo(apart > 0);
        }
    }

    /** SciPy's levene, centre 'median': F 3.698, p 0.0834, which is not below the usual 0.05. */
    @Test
    void noiseThatMayWellBeTheSameIsNotSaidToDiffer() {
        Comparison comparison = compare(SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 38, 38.3, 37.6, 38.4, 37.8, 38.1)
                .stint("B", Metric.CLUB_SPEED, 37.8, 38.5, 37.3, 38.8, 37.6, 38.2).build());
        assertThat(speed(comparison).classical().brownForsythe().p()).isCloseTo(0.083387751, within(1e-6));
        assertThat(speed(comparison).classical().noiseDiffers()).isFalse();
    }

    @Test
    void aRehearsalDoesNotUseUpTheSettlingSwings() {
        Session session = SessionBuilder.of("A", "B").goal(FASTER)
                .stint("A", Metric.CLUB_SPEED, 50, 51, 20, 38, 38.3, 37.7).last(s -> s.withSettlingSwings(1)
                        .withShots(java.util.stream.IntStream.range(0, 6)
                                .mapToObj(i -> s.shots().get(i).withRehearsal(i < 2)).toList()))
                .stint("B", Metric.CLUB_SPEED, 39, 38.6, 39.1).build();
        Comparison comparison = compare(session);
        assertThat(comparison.configurations().get(0).scored()).isEqualTo(3);
        assertThat(speed(comparison).configuration("id-A").orElseThrow().mean()).isCloseTo(38, within(1e-9));
    }

    private static Stint rehearsed(Stint stint) {
        return stint.withShots(stint.shots().stream().map((Shot s) -> s.withRehearsal(true)).toList());
    }

    @Test
    void referenceThatTheTestDoesNotHave() {
        Session session = SessionBuilder.of("A", "B").build();
        assertThatThrownBy(() -> Comparer.withSettings(ShopSettings.usual())
                .compare(session, session.tests().get(0), "id-Z"))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("has no configuration 'id-Z'");
    }
}

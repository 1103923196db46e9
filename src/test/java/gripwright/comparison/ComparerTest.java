package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.BuildUp;
import gripwright.model.Diameter;
import gripwright.model.Direction;
import gripwright.model.Goal;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.PhysicalClub;
import gripwright.model.PrimaryMetric;
import gripwright.model.Readings;
import gripwright.model.ReadingSource;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

class ComparerTest {

    private static final Goal GOAL = Goal.open().withPrimaries(List.of(
            PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER),
            PrimaryMetric.mean(Metric.FACE_ANGLE, Direction.NEAR_TARGET)));

    private static SessionBuilder usual(long seed) {
        Random random = new Random(seed);
        SessionBuilder builder = SessionBuilder.of("A", "B", "C", "D", "E").goal(GOAL);
        for (String label : "ABCDEEDCBA".split("")) {
            List<Readings> shots = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                shots.add(Readings.of(Metric.CLUB_SPEED, 38 + 0.5 * random.nextGaussian())
                        .with(Metric.FACE_ANGLE, (label.equals("B") ? -6 : 5) + random.nextGaussian())
                        .with(Metric.CARRY, 140 + 4 * random.nextGaussian())
                        .with(Metric.OFFLINE, 5 * random.nextGaussian())
                        .with(Metric.BALL_SPEED, 53 + random.nextGaussian()));
            }
            builder.stint(label, shots);
        }
        return builder;
    }

    private static Comparison compare(Session session) {
        return Comparer.withSettings(ShopSettings.usual()).compareAll(session).get(0);
    }

    @Test
    void theSameSessionAlwaysGivesTheSameAnswerOnAnyThread() throws Exception {
        Session session = usual(1).build();
        Comparison first = compare(session);
        Comparer shared = Comparer.withSettings(ShopSettings.usual());
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Comparison>> calls = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                calls.add(() -> shared.compare(session, session.tests().get(0)));
            }
            for (var result : threads.invokeAll(calls)) {
                assertThat(result.get()).isEqualTo(first);
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void differencesReadTheSameBothWaysRound() {
        MetricComparison face = compare(usual(2).build()).metric(Metric.FACE_ANGLE).orElseThrow();
        assertThat(face.differences()).hasSize(10);
        Difference there = face.difference("id-B", "id-A").orElseThrow();
        Difference back = face.difference("id-A", "id-B").orElseThrow();
        assertThat(back).isEqualTo(there.reversed());
        assertThat(back.estimate()).isEqualTo(-there.estimate());
        assertThat(back.probabilityMatters()).isEqualTo(there.probabilityHarms());
        assertThat(face.difference("id-A", "id-A")).isEmpty();
    }

    @Test
    void eitherSideOfATargetCanBeWorthTheSame() {
        // B is 11° to the left of the others; 6 off on one side against 5 on the other is a loss of one.
        MetricComparison face = compare(usual(3).build()).metric(Metric.FACE_ANGLE).orElseThrow();
        Difference difference = face.difference("id-B", "id-A").orElseThrow();
        assertThat(difference.change()).isEqualTo(Change.LOWER);
        assertThat(difference.gain().value()).isCloseTo(-1, within(1.0));
        assertThat(difference.verdict()).isNotEqualTo(Verdict.BETTER);
        // Far from the target the gain is the signed difference, and the draws agree with the closed form.
        Difference plain = face.difference("id-C", "id-A").orElseThrow();
        assertThat(plain.gain().value()).isCloseTo(-plain.estimate(), within(0.02));
        assertThat(plain.gain().interval().low()).isCloseTo(-plain.interval().high(), within(0.06));
        assertThat(plain.probabilityPositive()).isCloseTo(1 - plain.probabilityHigher(), within(0.01));
    }

    @Test
    void theFamilyRuleOnDrawsAgreesWithTheStudentizedRange() {
        MetricComparison face = compare(usual(4).build()).metric(Metric.FACE_ANGLE).orElseThrow();
        Session signed = usual(4).goal(Goal.open().withPrimaries(List.of(
                PrimaryMetric.mean(Metric.FACE_ANGLE, Direction.LOWER)))).build();
        MetricComparison lower = compare(signed).metric(Metric.FACE_ANGLE).orElseThrow();
        for (String of : List.of("C", "D", "E")) {
            Difference drawn = face.difference("id-" + of, "id-A").orElseThrow();
            Difference exact = lower.difference("id-" + of, "id-A").orElseThrow();
            // B lies beyond the target, so that the two families are not quite the same one.
            assertThat(drawn.probabilityMattersAdjusted()).isCloseTo(exact.probabilityMattersAdjusted(), within(0.04));
        }
    }

    @Test
    void anotherReference() {
        Session session = usual(1).build();
        Comparison comparison = Comparer.withSettings(ShopSettings.usual())
                .compare(session, session.tests().get(0), "id-D");
        assertThat(comparison.referenceId()).isEqualTo("id-D");
        assertThat(comparison.metrics().get(0).differences().subList(0, 4)).allMatch(d -> d.against().equals("id-D"));
        assertThat(comparison.configurations()).filteredOn(ComparedConfiguration::reference)
                .extracting(ComparedConfiguration::label).containsExactly("D");
    }

    @Test
    void theSmallestDifferenceIsAtLeastAShareOfTheNoise() {
        MetricComparison raised = compare(usual(1).smallest(Metric.CLUB_SPEED, 0.01).build())
                .metric(Metric.CLUB_SPEED).orElseThrow();
        assertThat(raised.smallestDifferenceRaised()).isTrue();
        assertThat(raised.smallestDifference()).isCloseTo(0.25 * raised.model().residualSd(), within(1e-12));
        MetricComparison own = compare(usual(1).smallest(Metric.CLUB_SPEED, 0.4).build())
                .metric(Metric.CLUB_SPEED).orElseThrow();
        assertThat(own.smallestDifference()).isEqualTo(0.4);
    }

    @Test
    void patternsAreForTheNextShot() {
        Comparison comparison = compare(usual(1).build());
        assertThat(comparison.patterns()).hasSize(5);
        ShotPattern pattern = comparison.patterns().get(0);
        ShotPattern.Ellipse ellipse = pattern.ellipse(0.95);
        // 2 (n - 1)(n + 1)/(n (n - 2)) F at n = 10: F(0.95; 2, 8) = 4.459 (any F table), so 2.475 x 4.459 = 11.036.
        double trace = pattern.varianceCarry() + pattern.varianceOffline();
        double radius = (ellipse.semiMajor() * ellipse.semiMajor() + ellipse.semiMinor() * ellipse.semiMinor()) / trace;
        assertThat(radius).isCloseTo(11.036, within(0.005));
        assertThat(pattern.distribution()).contains("next point");
        assertThat(pattern.distanceToTarget()).isNull();
        assertThat(pattern.misses()).extracting(ShotPattern.Miss::side)
                .containsExactly(ShotPattern.Side.LEFT, ShotPattern.Side.RIGHT);
        assertThat(pattern.misses().get(0).distance()).isCloseTo(9.144, within(1e-9));
        assertThat(comparison.patternDifferences()).hasSize(10);
    }

    @Test
    void aMishitIsFlaggedAndNotSetAside() {
        SessionBuilder builder = usual(1);
        builder.stint("C", List.of(Readings.of(Metric.CARRY, 80).with(Metric.BALL_SPEED, 40)
                .with(Metric.OFFLINE, 3)));
        Comparison comparison = compare(builder.build());
        assertThat(comparison.flag("shot-51")).isPresent();
        assertThat(comparison.flag("shot-51").orElseThrow().sentence()).startsWith("Mishit?").contains("of C");
        assertThat(comparison.metric(Metric.CARRY).orElseThrow().configuration("id-C").orElseThrow().shots())
                .isEqualTo(11);
    }

    @Test
    void sizeAnswersWithALineACurveOrNotAtAll() {
        SessionBuilder builder = SessionBuilder.of("A", "B", "C", "D", "E").goal(GOAL);
        Random random = new Random(3);
        double[] diameters = {21, 22, 23, 24, 25};
        for (int k = 0; k < 5; k++) {
            double diameter = diameters[k];
            builder.configuration("ABCDE".substring(k, k + 1), c -> c.withBuildUp(BuildUp.none())
                    .withFittedDiameters(List.of(new Diameter(50.8, diameter))));
        }
        for (String label : "ABCDEEDCBAABCDE".split("")) {
            double off = diameters["ABCDE".indexOf(label)] - 23;
            double[] speeds = random.doubles(6).map(u -> 38 - 0.8 * off * off + 0.3 * random.nextGaussian()).toArray();
            builder.stint(label, Metric.CLUB_SPEED, speeds);
        }
        SizeResponse response = compare(builder.build()).sizeResponses().get(0);
        assertThat(response.place()).isEqualTo(SizeResponse.Place.UPPER_HAND);
        assertThat(response.bestDiameterMm()).isCloseTo(23, within(0.2));
        assertThat(response.bestInterval().contains(23)).isTrue();
        assertThat(response.sentence()).startsWith("A size in between is highest in club speed");
        assertThat(compare(usual(1).build()).sizeResponses()).isEmpty();
    }

    @Test
    void whatHappenedAroundTheShotsIsAReason() {
        SessionBuilder builder = SessionBuilder.of("A", "B").goal(GOAL)
                .configuration("A", c -> c.withPhysicalClubId("one")).configuration("B", c -> c.withPhysicalClubId("two"))
                .stint("A", Metric.CLUB_SPEED, 38, 38.4, 37.9)
                .stint("B", Metric.CLUB_SPEED, 38.3, 38.9, 38.2)
                .last(s -> s.withNotes(List.of(new Note(null, Note.Kind.BALL_CHANGED, "", null))));
        Session session = builder.build();
        session = session.withTest(session.tests().get(0).withPhysicalClubs(List.of(
                new PhysicalClub("one", "club 1", PhysicalClub.Mounting.TWIN),
                new PhysicalClub("two", "twin with the blue dot", PhysicalClub.Mounting.TWIN))));
        List<String> reasons = compare(session).metrics().get(0).differences().get(0).reasons();
        assertThat(reasons).contains("The ball was changed after swing 3; part of the difference may be the ball's.",
                "B was hit on twin with the blue dot and A on club 1; two clubs differ a little in themselves.");
    }

    @Test
    void modelledMetricsAndTheAxisOfTheClosureRateAreSaid() {
        SessionBuilder builder = SessionBuilder.of("A").goal(GOAL).hand(Handedness.LEFT)
                .stint("A", List.of(Readings.of(Metric.CLOSURE_RATE, 2000).with(Metric.APEX, 30)));
        Session session = builder.build().withSource(ReadingSource.usual().withModelled(EnumSet.of(Metric.APEX)));
        Comparison comparison = compare(session);
        assertThat(comparison.metric(Metric.APEX).orElseThrow().modelled()).isTrue();
        assertThat(comparison.metric(Metric.APEX).orElseThrow().sentences())
                .contains("The source works apex out of a model; it was not measured.");
        assertThat(comparison.metric(Metric.CLOSURE_RATE).orElseThrow().sentences())
                .anyMatch(s -> s.startsWith("About which axis the closure rate is taken isn't said"));
    }

    @Test
    void textbookFiguresStandBesideTheModel() {
        ClassicalFigures figures = compare(usual(1).build()).metric(Metric.CLUB_SPEED).orElseThrow().classical();
        assertThat(figures.welch()).hasSize(10);
        assertThat(figures.tukeyKramer()).hasSize(10);
        assertThat(figures.gamesHowell()).hasSize(10);
        assertThat(figures.anova().df1()).isEqualTo(4);
        assertThat(figures.anova().df2()).isEqualTo(45);
        assertThat(figures.reml().kenwardRoger()).isNotNull();
        assertThat(figures.welch().get(0).of()).isEqualTo("B");
        assertThat(figures.tukeyKramer().get(0).estimate()).isCloseTo(figures.welch().get(0).estimate(), within(1e-12));
    }
}

package gripwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.Direction;
import gripwright.model.Feel;
import gripwright.model.Goal;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.PrimaryMetric;
import gripwright.model.Readings;
import gripwright.model.ShopSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Choosing: the goal's metrics, guardrails and feel, and the gamer where nothing is worth a change. */
class ChoosingTest {

    private static final Goal FASTER =
            Goal.open().withPrimaries(List.of(PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER)));
    private static final Feel LIKED = Feel.unanswered().withComfort(6).withControl(6).withConfidence(6)
            .withWouldPlay(Feel.WouldPlay.YES);
    private static final Feel DISLIKED = Feel.unanswered().withComfort(3).withControl(3).withConfidence(3)
            .withWouldPlay(Feel.WouldPlay.NO);

    /** A, B, C, C, B, A, six each; B gains speed (m/s), and loses carry (m) for it. */
    private static SessionBuilder session(double gainOfB, double lossOfB, Feel feelOfB) {
        Random random = new Random(21);
        SessionBuilder builder = SessionBuilder.of("A", "B", "C").goal(FASTER);
        for (String label : "ABCCBA".split("")) {
            boolean b = label.equals("B");
            List<Readings> shots = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                shots.add(Readings.of(Metric.CLUB_SPEED, 38 + (b ? gainOfB : 0) + 0.4 * random.nextGaussian())
                        .with(Metric.CARRY, 140 - (b ? lossOfB : 0) + 3 * random.nextGaussian())
                        .with(Metric.FACE_ANGLE, (b ? 0.8 : 3) * random.nextGaussian()));
            }
            builder.stint(label, shots).last(s -> s.withFeel(b ? feelOfB : LIKED));
        }
        return builder;
    }

    private static Comparison compare(SessionBuilder builder) {
        Comparison comparison = Comparer.withSettings(ShopSettings.usual()).compareAll(builder.build()).get(0);
        assertThat(NoNanAnywhere.places(comparison)).isEmpty();
        return comparison;
    }

    @Test
    void aClearGainIsChosenAndProven() {
        Advice advice = compare(session(2, 0, LIKED)).advice();
        assertThat(advice.label()).isEqualTo("B");
        assertThat(advice.proven()).isTrue();
        assertThat(advice.keepsGamer()).isFalse();
        assertThat(advice.carriedBy()).isEqualTo("club speed");
        assertThat(advice.headline()).isEqualTo("Choose B: it serves better.");
        assertThat(advice.conflict()).isEmpty();
    }

    @Test
    void withNothingWorthChangingForTheChoiceIsTheGamer() {
        Comparison comparison = compare(session(0, 0, LIKED));
        assertThat(comparison.advice().label()).isEqualTo("A");
        assertThat(comparison.advice().keepsGamer()).isTrue();
        assertThat(comparison.advice().headline()).contains("nothing tried here is likely worth a change");
        assertThat(comparison.overall().stream().mapToDouble(Standing::probabilityBest).sum()).isBetween(0.999, 1.001);
        assertThat(comparison.overall().get(0).expectedGain()).isZero();
    }

    @Test
    void whatThePlayerWouldNotPlayIsNotChosenAndTheConflictIsSpelledOut() {
        Advice advice = compare(session(2, 0, DISLIKED)).advice();
        assertThat(advice.label()).isNotEqualTo("B");
        assertThat(advice.reasons()).contains("The player would not play B.");
        assertThat(advice.conflict()).startsWith("Numbers and feel disagree: the numbers lean to B")
                .contains("would not play B");
    }

    @Test
    void aBrokenGuardrailRulesOut() {
        Goal guarded = FASTER.withGuardrails(List.of(Guardrail.mean(Metric.CARRY, Direction.HIGHER, null, 2)));
        Comparison comparison = compare(session(2, 15, LIKED).goal(guarded));
        assertThat(comparison.advice().label()).isNotEqualTo("B");
        assertThat(comparison.advice().reasons()).anyMatch(r -> r.startsWith("B likely breaks a guardrail: lose no more "
                + "than 2.2\u00a0yd of carry"));
        Standing b = comparison.overall().get(1);
        assertThat(b.guardrails().get(0).probabilityKept()).isLessThan(0.01);
        assertThat(b.probabilityBest()).isLessThan(0.01);
    }

    /** Two configurations in faces of known scatter, the second wider; the means of club speed are alike but for B's gain. */
    private static SessionBuilder scattered(Goal goal) {
        double[][] faces = {{0, 1, 2, 3}, {0, 4, -4, 2}, {1, 2, 1, 2}, {3, -3, 5, 0}};
        SessionBuilder builder = SessionBuilder.of("A", "B").goal(goal);
        for (int stint = 0; stint < faces.length; stint++) {
            List<Readings> readings = new java.util.ArrayList<>();
            for (int shot = 0; shot < faces[stint].length; shot++) {
                readings.add(Readings.of(Metric.FACE_ANGLE, faces[stint][shot])
                        .with(Metric.CLUB_SPEED, 38 + 2 * (stint % 2) + 0.3 * (shot % 3 - 1)));
            }
            builder.stint(stint % 2 == 0 ? "A" : "B", readings);
        }
        return builder;
    }

    /**
     * P(sigma_B - sigma_A at most m) by R 4.2.2's integrate over the two scaled inverse chi distributions of
     * statistics-classical.md: 0.200222 at m = 0.5, 0.438967 at m = 1.
     */
    @Test
    void aGuardrailCanLookAtSpread() {
        Guardrail half = Guardrail.spread(Metric.FACE_ANGLE, 0.5);
        Comparison guarded = compare(scattered(FASTER.withGuardrails(List.of(half))));
        Standing.GuardrailCheck check = guarded.overall().get(1).guardrails().get(0);
        assertThat(check.probabilityKept()).isCloseTo(0.200222, within(0.01));
        assertThat(check.spread()).isTrue();
        assertThat(check.sentence()).isEqualTo("let the spread of face angle grow by no more than 0.5\u00b0");
        assertThat(guarded.overall().get(0).guardrails().get(0).probabilityKept()).isEqualTo(1);
        assertThat(guarded.advice().label()).isEqualTo("A");
        assertThat(guarded.advice().reasons()).anyMatch(r -> r.startsWith("B likely breaks a guardrail: let the spread"));
        assertThat(compare(scattered(FASTER.withGuardrails(List.of(half.withMostLoss(1))))).overall().get(1).guardrails()
                .get(0).probabilityKept()).isCloseTo(0.438967, within(0.01));
        assertThat(compare(scattered(FASTER)).advice().label()).isEqualTo("B");
    }

    @Test
    void aGuardrailOnSpreadSaysNothingOfTheMeanAndWhatItCannotCheckIsSaid() {
        Goal goal = FASTER.withGuardrails(List.of(Guardrail.spread(Metric.SPIN_RATE, 100),
                Guardrail.spread(Metric.STRIKE_SIDEWAYS, 1)));
        Comparison comparison = compare(scattered(goal));
        assertThat(comparison.advice().reasons())
                .contains("The guardrail on the spread of strike, heel to toe can't be checked: too few shots were hit yet.");
        assertThat(Aim.of(Metric.SPIN_RATE, goal, gripwright.model.ClubKind.IRON))
                .isEqualTo(Aim.of(Metric.SPIN_RATE, FASTER, gripwright.model.ClubKind.IRON));
    }

    @Test
    void painRulesOut() {
        SessionBuilder builder = session(2, 0, LIKED);
        builder.stint("B", Metric.CLUB_SPEED, 40, 40.1)
                .last(s -> s.withNotes(List.of(new Note(null, Note.Kind.PAIN, "thumb", null))));
        assertThat(compare(builder).advice().reasons())
                .anyMatch(r -> r.startsWith("Pain was noted with B: comfort decides."));
    }

    @Test
    void comfortFirst() {
        Feel lessComfortable = LIKED.withComfort(4);
        Advice advice = compare(session(2, 0, lessComfortable).goal(FASTER.withComfortFirst(true))).advice();
        assertThat(advice.label()).isNotEqualTo("B");
        assertThat(advice.reasons()).anyMatch(r -> r.startsWith("Comfort comes first, and B is less comfortable (4.0"));
        assertThat(compare(session(2, 0, lessComfortable)).advice().label()).isEqualTo("B");
    }

    @Test
    void repeatabilityCanBeTheGoal() {
        Goal steadier = Goal.open().withPrimaries(List.of(new PrimaryMetric(Metric.FACE_ANGLE,
                PrimaryMetric.Aspect.SPREAD, Direction.LOWER, null, 1)));
        Comparison comparison = compare(session(0, 0, LIKED).goal(steadier));
        assertThat(comparison.advice().label()).isEqualTo("B");
        assertThat(comparison.advice().carriedBy()).isEqualTo("spread of face angle");
        SpreadComparison spread = comparison.spread(Metric.FACE_ANGLE).orElseThrow();
        assertThat(spread.primary()).isTrue();
        SpreadComparison.SpreadRatio ratio = spread.ratio("id-B", "id-A").orElseThrow();
        // 0.8 against 3, drawn to what all share.
        assertThat(ratio.ratio().value()).isBetween(0.3, 0.7);
        // Twelve shots choose, but they don't prove a spread.
        assertThat(ratio.verdict()).isEqualTo(Verdict.NOT_SETTLED);
        assertThat(ratio.leaning()).isEqualTo(Leaning.TOWARDS_BETTER);
        assertThat(spread.ratio("id-A", "id-B").orElseThrow().verdict()).isEqualTo(ratio.verdict().reversed());
    }

    @Test
    void metricsThatRepeatEachOtherDoNotCountTwice() {
        // Ball speed is club speed times a constant: with independent draws the sum of both gains would look surer.
        Random random = new Random(5);
        SessionBuilder builder = SessionBuilder.of("A", "B").goal(Goal.open().withPrimaries(List.of(
                PrimaryMetric.mean(Metric.CLUB_SPEED, Direction.HIGHER),
                PrimaryMetric.mean(Metric.BALL_SPEED, Direction.HIGHER))));
        for (String label : "ABBA".split("")) {
            List<Readings> shots = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                double speed = 38 + (label.equals("B") ? 0.25 : 0) + 0.5 * random.nextGaussian();
                shots.add(Readings.of(Metric.CLUB_SPEED, speed).with(Metric.BALL_SPEED, 1.4 * speed));
            }
            builder.stint(label, shots);
        }
        Standing b = compare(builder).overall().get(1);
        double alone = b.parts().get(0).probabilityBest();
        assertThat(b.probabilityBest()).isBetween(alone - 0.03, alone + 0.03);
        assertThat(alone).isBetween(0.6, 0.97);
    }

    @Test
    void anOpenGoalNamesNothingToChooseBy() {
        Comparison comparison = compare(session(2, 0, LIKED).goal(Goal.open()));
        assertThat(comparison.advice().headline()).isEqualTo("No choice yet: the goal names nothing to choose by.");
        assertThat(comparison.overall()).allMatch(s -> s.probabilityBest() == null);
    }

    @Test
    void aTargetThatNobodyNamedIsAskedFor() {
        Comparison comparison = compare(session(0, 0, LIKED).goal(Goal.open().withPrimaries(
                List.of(PrimaryMetric.mean(Metric.CARRY, Direction.NEAR_TARGET)))));
        MetricComparison carry = comparison.metric(Metric.CARRY).orElseThrow();
        assertThat(carry.isScored()).isFalse();
        assertThat(carry.sentences()).anyMatch(s -> s.startsWith("Nearer which number would be better?"));
        assertThat(comparison.advice().reasons()).anyMatch(r -> r.contains("not which number to be near"));
    }
}

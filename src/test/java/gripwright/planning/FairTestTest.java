package gripwright.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.ReadingText;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.model.TestClub;
import gripwright.planning.FairTest.Drift;
import gripwright.planning.FairTest.Kind;
import gripwright.units.UnitChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Warnings of the fair test, tiring, and what to hit next. */
class FairTestTest {

    private static final ReadingText TEXT = new ReadingText(UnitChoice.metric(), '.', Handedness.LEFT);

    /** Letters in order of play; upper case done with the count of shots, lower case planned. */
    private static ClubTest test(String order, int... shots) {
        List<Configuration> configurations = new ArrayList<>();
        for (int n = 0; n < 3; n++) {
            configurations.add(Configuration.ofIndex(n, "c" + "ABC".charAt(n), "ABC".substring(n, n + 1),
                    Grip.weighed("g" + n, "Invented " + n, 50), BuildUp.none()));
        }
        List<Stint> stints = new ArrayList<>();
        for (int n = 0; n < order.length(); n++) {
            char letter = order.charAt(n);
            Stint stint = Stint.planned("s" + n, "c" + Character.toUpperCase(letter), Stint.Kind.SCORED, 4, 0);
            stints.add(Character.isLowerCase(letter) ? stint : stint.withState(Stint.State.DONE)
                    .withShots(speeds("s" + n, new double[shots[n]], 38)));
        }
        return ClubTest.empty("t", TestClub.named(ClubKind.IRON, "8-iron")).withConfigurations(configurations)
                .withStints(stints);
    }

    private static List<Shot> speeds(String id, double[] more, double base) {
        List<Shot> shots = new ArrayList<>();
        for (int n = 0; n < more.length; n++) {
            shots.add(Shot.of(id + "-" + n, Readings.of(Metric.CLUB_SPEED, base + more[n])));
        }
        return shots;
    }

    private static List<Kind> kinds(ClubTest test, Drift... drifts) {
        return FairTest.inWordsOf(TEXT).warnings(test, List.of(drifts)).stream()
                .map(FairTest.Warning::kind).toList();
    }

    @Test
    void oneStintEachIsWarnedOfUnlessARetestIsPlanned() {
        assertThat(kinds(test("ABC", 4, 4, 4))).containsExactly(Kind.ONE_STINT_ONLY);
        assertThat(FairTest.inWordsOf(TEXT).warnings(test("ABC", 4, 4, 4), List.of()).get(0).sentence())
                .contains("Every configuration has one stint only");
        assertThat(FairTest.inWordsOf(TEXT).warnings(test("ABCa", 4, 4, 4, 0), List.of()).get(0).sentence())
                .contains("B and C have one stint only");
        assertThat(kinds(test("ABCcba", 4, 4, 4, 0, 0, 0))).isEmpty();
    }

    @Test
    void twoStintsInARowWithoutAChangeAreOne() {
        ClubTest test = test("ABBA", 4, 4, 4, 4);
        assertThat(kinds(test)).isEmpty();
        assertThat(kinds(test.withStint(test.stints().get(2).withChangedBefore(false)))).containsExactly(
                Kind.ONE_STINT_ONLY);
    }

    /** Twice as many is only worth a word from three shots more on: our judgement. */
    @Test
    void oneShotMoreIsNoWarning() {
        assertThat(kinds(test("ABAB", 2, 1, 2, 1))).isEmpty();
    }

    @Test
    void stintsOfVeryDifferentLengthAreWarnedOf() {
        assertThat(kinds(test("ABAB", 6, 3, 6, 4))).containsExactly(Kind.SHOTS_UNEVEN);
        assertThat(kinds(test("ABAB", 4, 3, 4, 4))).isEmpty();
    }

    @Test
    void aDriftAsLargeAsTheNoiseIsSaid() {
        ClubTest test = test("ABAB", 4, 4, 4, 4);
        assertThat(kinds(test, new Drift(Metric.CLUB_SPEED, -0.3, 0.4))).isEmpty();
        assertThat(kinds(test, new Drift(Metric.CLUB_SPEED, -0.5, 0.4))).containsExactly(Kind.DRIFT_LARGE);
        assertThat(FairTest.inWordsOf(TEXT).warnings(test, List.of(new Drift(Metric.CLUB_SPEED, -0.5, 0.4))).get(0)
                .sentence()).contains("\u22121.8 km/h");
    }

    /** One stint alone: the slope's t with 3 degrees of freedom; chance worked out by the closed form of that t. */
    @Test
    void aFallWithinOneStintIsJudgedByItsOwnNoise() {
        Stint stint = Stint.planned("s", "cA", Stint.Kind.SCORED, 5, 0)
                .withShots(speeds("x", new double[] {2, 1.5, 1.2, 0.6, 0.3}, 38));
        SpeedFall fall = SpeedFall.within(stint, List.of(stint)).orElseThrow();
        assertThat(fall.fall()).isEqualTo(1.72, within(1e-9));
        assertThat(fall.chance()).isEqualTo(0.00021835060190, within(1e-9));
        assertThat(fall.beyondNoise()).isTrue();
    }

    @Test
    void theSameFallIsNoiseWhereOtherStintsAreNoisy() {
        Stint falling = Stint.planned("s", "cA", Stint.Kind.SCORED, 5, 0)
                .withShots(speeds("x", new double[] {2, 1.5, 1.2, 0.6, 0.3}, 38));
        Stint noisy = Stint.planned("n", "cB", Stint.Kind.SCORED, 6, 0)
                .withShots(speeds("y", new double[] {2, -3, 3, -2, 2, -3}, 38));
        assertThat(SpeedFall.within(falling, List.of(falling, noisy)).orElseThrow().beyondNoise()).isFalse();
    }

    @Test
    void tooFewShotsOrNoVariationMakeNoTrend() {
        Stint few = Stint.planned("s", "cA", Stint.Kind.SCORED, 5, 0)
                .withShots(speeds("x", new double[] {2, 1, 0, -1}, 38));
        Stint same = few.withShots(speeds("x", new double[6], 38));
        assertThat(SpeedFall.within(few, List.of(few))).isEmpty();
        assertThat(SpeedFall.within(same, List.of(same))).isEmpty();
    }

    private static Stint hit(String id, double... speeds) {
        return Stint.planned(id, "cA", Stint.Kind.SCORED, speeds.length, 0).withState(Stint.State.DONE)
                .withShots(speeds(id, speeds, 0));
    }

    private static void fall(Stint stint, double fall, double chance, boolean alarm) {
        SpeedFall found = SpeedFall.within(stint, List.of(stint, hit("other", 38.0, 38.4, 37.8, 38.1, 38.3))).orElseThrow();
        assertThat(found.fall()).isCloseTo(fall, within(1e-7));
        assertThat(found.chance()).isCloseTo(chance, within(1e-7));
        assertThat(found.beyondNoise()).isEqualTo(alarm);
    }

    /**
     * R 4.2.2: lm of each stint on its shot numbers, residual squares pooled over the two, pt of slope over standard error. The
     * alarm is for one in a hundred, so that a fall that chance brings once in thirty is none; the third stint is the
     * first with its third shot set aside.
     */
    @Test
    void aFallOfSpeedAgreesWithRegressionInR() {
        fall(hit("a", 38.2, 37.9, 38.1, 37.6, 37.5, 37.3), 0.88571429, 0.00460548, true);
        fall(hit("b", 38.3, 38.0, 38.2, 37.8, 37.9, 37.7), 0.52857143, 0.03349867, false);
        Stint whole = hit("c", 38.2, 37.9, 38.1, 37.6, 37.5, 37.3);
        List<Shot> shots = new ArrayList<>(whole.shots());
        shots.set(2, shots.get(2).withSetAsideReason("mishit"));
        fall(whole.withShots(shots), 0.84302326, 0.00588431, true);
    }

    @Test
    void aTiringPlayerIsSaid() {
        ClubTest test = test("AB", 4, 4);
        Stint last = test.stints().get(1);
        ClubTest tiring = test.withStint(last.withShots(speeds("x", new double[] {2, 1.5, 1.2, 0.6, 0.3}, 38)));
        assertThat(kinds(tiring)).startsWith(Kind.TIRING);
    }

    @Test
    void nextIsWhatTheQueueSays() {
        ClubTest test = test("Abc", 2, 0, 0);
        ClubTest inHand = test.withStint(test.stints().get(0).withState(Stint.State.IN_HAND));
        assertThat(WhatNext.of(inHand, Optional.empty()).headline()).isEqualTo("two more, then B");
        assertThat(WhatNext.of(test, Optional.empty()).headline()).isEqualTo("next: B");
        ClubTest full = test("Abc", 4, 0, 0);
        assertThat(WhatNext.of(full.withStint(full.stints().get(0).withState(Stint.State.IN_HAND)), Optional.empty())
                .headline()).isEqualTo("end this stint, then B");
    }

    @Test
    void settlingSwingsComeBeforeTheShotsThatCount() {
        ClubTest test = test("A", 0);
        ClubTest settling = test.withStint(test.stints().get(0).withSettlingSwings(2).withState(Stint.State.IN_HAND));
        assertThat(WhatNext.of(settling, Optional.empty()).headline()).isEqualTo("two to settle, then four");
    }

    @Test
    void anEmptyQueueAsksForWhatIsMissing() {
        assertThat(WhatNext.of(test("AB", 4, 4), Optional.empty()).headline()).isEqualTo("hit C");
        assertThat(WhatNext.of(test("ABC", 4, 4, 4), Optional.empty()).headline()).isEqualTo("hit A again");
        assertThat(WhatNext.of(test("ABCA", 4, 4, 1, 4), Optional.empty()).headline()).isEqualTo("more with C");
        WhatNext done = WhatNext.of(test("ABCA", 4, 4, 4, 4), Optional.of("C leans open, not settled"));
        assertThat(done.enough()).isTrue();
        assertThat(done.reason()).contains("C leans open, not settled");
    }

    @Test
    void painStops() {
        ClubTest test = test("Ab", 2, 0);
        ClubTest pain = test.withStint(test.stints().get(0).withNotes(
                List.of(new Note(null, Note.Kind.PAIN, "left thumb", null))));
        assertThat(WhatNext.of(pain, Optional.empty()).headline()).startsWith("stop");
    }

    @Test
    void withoutAPlanItSaysWhereToMakeOne() {
        ClubTest nothing = ClubTest.empty("t", TestClub.named(ClubKind.IRON, "8-iron"));
        assertThat(WhatNext.of(nothing, Optional.empty()).reason()).contains("Plan");
        assertThat(WhatNext.of(test("", new int[0]), Optional.empty()).headline()).isEqualTo("write the order");
    }

    @Test
    void aScoredStintThatGoesOnFromTheWarmUpCountsAsOne() {
        ClubTest test = test("AABA", 3, 4, 4, 4);
        List<Stint> stints = new ArrayList<>(test.stints());
        stints.set(0, stints.get(0).withKind(Stint.Kind.WARM_UP));
        stints.set(1, stints.get(1).withChangedBefore(false));
        assertThat(FairTest.inWordsOf(TEXT).warnings(test.withStints(stints), List.of()).get(0).sentence())
                .startsWith("B has one stint only");
    }
}

package gripwright.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gripwright.comparison.Comparer;
import gripwright.comparison.Comparison;
import gripwright.model.ClubTest;
import gripwright.model.Goal;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.storage.SessionFile;
import java.io.InputStream;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OutlookTest {

    private static final ShopSettings SHOP = ShopSettings.usual();

    /** Invented, the one of the comparison's reference values. */
    private static Session session() throws Exception {
        try (InputStream in = OutlookTest.class.getResourceAsStream("/gripwright/comparison/reference/session.json")) {
            return new SessionFile().parse(in.readAllBytes(), "session.json").value();
        }
    }

    /**
     * Without stint effects half a standard deviation takes 63 shots a group: 2 (2.8016/0.5)² = 62.8; Cohen 1988, table
     * 2.4.1, has 64 by t.
     */
    @Test
    void shotsForADifferenceAgreeWithTheTextbook() {
        DetectableDifference found = DetectableDifference.of(Metric.FACE_ANGLE, new DetectableDifference.Size(10, 5), 2,
                true, 0);
        assertThat(found.shotsFor(1)).isEqualTo(63);
        assertThat(found.shotsFor(found.difference())).isEqualTo(10);
        assertThat(found.shotsFor(found.difference() / 2)).isEqualTo(40);
        assertThatThrownBy(() -> DetectableDifference.of(Metric.FACE_ANGLE, new DetectableDifference.Size(0, 0), 2, true, 0)
                .shotsFor(1)).isInstanceOf(IllegalStateException.class);
    }

    /**
     * By hand from the reference values of the comparison: fewest shots 10 in 3 stints, rho 0.5 √(2/π), so that club speed
     * (SD 0.36623, d 0.45) takes 2 (2.801585 × 0.36623/0.45)² (1 + 0.159155 × 10/3) = 15.9 shots and face angle 142.3.
     */
    @Test
    void whatIsNotSettledSaysWhatItWouldTake() throws Exception {
        Session session = session();
        ClubTest test = session.tests().get(0);
        Comparison comparison = Comparer.withSettings(SHOP).compare(session, test);
        Outlook outlook = Outlook.of(test, comparison, SHOP).orElseThrow();
        assertThat(outlook.found().metric()).isEqualTo(Metric.CLUB_SPEED);
        assertThat(outlook.shots()).isEqualTo(16);
        String sentence = outlook.sentence(ReadingText.of(SHOP, session.player().hand()));
        assertThat(sentence).isEqualTo("To see a difference of 1.0\u00a0mph in club speed takes about 16 shots with each, in stints"
                + " as long as now; the fewest so far are 10.");
        WhatNext next = WhatNext.of(test, Optional.empty(), Optional.of(sentence));
        assertThat(next.headline()).isEqualTo("the plan is done");
        assertThat(next.reason()).endsWith(sentence);
    }

    /** With a d of 0.6 m/s club speed takes 15.9 (0.45/0.6)² = 9.0 shots, which are hit; the face's 142.3 are not. */
    @Test
    void whatIsHitEnoughForComesLast() throws Exception {
        ReadingText text = ReadingText.of(SHOP, session().player().hand());
        Session session = session().withSmallestDifferences(java.util.Map.of(Metric.CLUB_SPEED, 0.6));
        ClubTest test = session.tests().get(0);
        Outlook face = Outlook.of(test, Comparer.withSettings(SHOP).compare(session, test), SHOP).orElseThrow();
        assertThat(face.shots()).isEqualTo(143);
        assertThat(face.sentence(text)).contains("would take more than 100 shots with each");
        Session fast = session.withGoal(session.goal().withPrimaries(session.goal().primaries().subList(2, 3)));
        Outlook speed = Outlook.of(test, Comparer.withSettings(SHOP).compare(fast, test), SHOP).orElseThrow();
        assertThat(speed.shots()).isEqualTo(9);
        assertThat(speed.sentence(text)).startsWith("Enough is hit to see a difference of 1.3");
    }

    @Test
    void withoutAPrimaryMetricThereIsNoOutlook() throws Exception {
        Session session = session().withGoal(Goal.open());
        ClubTest test = session.tests().get(0);
        assertThat(Outlook.of(test, Comparer.withSettings(SHOP).compare(session, test), SHOP)).isEmpty();
    }
}

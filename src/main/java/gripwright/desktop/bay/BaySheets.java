package gripwright.desktop.bay;

import gripwright.balance.TestBalance;
import gripwright.charts.Strip;
import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.PhysicalClub;
import gripwright.model.ReadingText;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.planning.FairTest;
import gripwright.planning.Outlook;
import gripwright.planning.WhatNext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Sets the sheet of the bay from the session as it is and the latest comparison. */
final class BaySheets {

    private static final int MOST_READINGS = 4;

    private final SteadyScales scales = new SteadyScales();

    /**
     * The sheet of a moment.
     *
     * @param comparison the latest comparison of this test; null before the first one
     * @param balance the latest balance of this test; null before the first one
     */
    BaySheet set(Session session, ClubTest test, ShopSettings settings, Comparison comparison, TestBalance balance,
            Hiding hiding) {
        ReadingText text = ReadingText.of(settings, session.player().hand());
        BayPictures pictures = new BayPictures(session, test, settings, comparison);
        Optional<Stint> shown = shown(test);
        List<Metric> chosen = chosen(pictures.metrics(), settings);
        String newest = shown.map(BayPictures::newest).orElse(null);
        return new BaySheet(shown.map(Stint::id).orElse(null), HandCard.of(test, balance, text, hiding.names()),
                last(shown, chosen, text), QueueRow.queue(test),
                shown.map(s -> ShotRow.of(s, chosen, text, comparison)).orElse(List.of()),
                chosen.stream().map(Metric::text).toList(),
                shown.map(s -> steady(test, pictures.strips(s, newest))).orElse(List.of()),
                shown.map(s -> pictures.pattern(s, newest)).orElse(null), WhatNext.of(test, advice(comparison), outlook(test, comparison, settings, text)),
                FairTest.inWordsOf(text).warnings(test, drifts(comparison, pictures.metrics())),
                SwingCount.of(session), session.tray().size(), twistReminder(test), hasRehearsal(session),
                empty(test));
    }

    /** The stint the sheet is about: the one in hand, else the last one that was hit. */
    static Optional<Stint> shown(ClubTest test) {
        return test.stintInHand().or(() -> lastDone(test));
    }

    static Optional<Stint> lastDone(ClubTest test) {
        return test.stints().stream().filter(s -> s.state() == Stint.State.DONE).reduce((a, b) -> b);
    }

    private static List<Metric> chosen(List<Metric> primaries, ShopSettings settings) {
        Set<Metric> chosen = new LinkedHashSet<>(primaries);
        chosen.addAll(settings.entryColumns());
        return chosen.stream().limit(MOST_READINGS).toList();
    }

    private static LastShot last(Optional<Stint> shown, List<Metric> chosen, ReadingText text) {
        if (shown.isEmpty() || shown.get().shots().isEmpty()) {
            return LastShot.of(null, "no shot in this stint yet", chosen, text);
        }
        Stint stint = shown.get();
        int index = stint.shots().size() - 1;
        Shot shot = stint.shots().get(index);
        String title = shot.isSetAside() ? "last shot, set aside: " + shot.setAsideReason()
                : stint.isScoredAt(index) ? "last shot" : "last shot, settles and isn\u2019t scored";
        return LastShot.of(shot, title, chosen, text);
    }

    private List<BayStrip> steady(ClubTest test, List<BayStrip> strips) {
        List<BayStrip> steady = new ArrayList<>();
        for (BayStrip strip : strips) {
            Strip kept = scales.steady(test.id(), strip.strip());
            steady.add(new BayStrip(kept, strip.verdict(), strip.figures()));
        }
        return steady;
    }

    private static Optional<String> outlook(ClubTest test, Comparison comparison, ShopSettings settings, ReadingText text) {
        return comparison == null ? Optional.empty() : Outlook.of(test, comparison, settings).map(o -> o.sentence(text));
    }

    private static Optional<String> advice(Comparison comparison) {
        return comparison == null ? Optional.empty()
                : Optional.ofNullable(comparison.advice()).map(a -> a.headline()).filter(s -> !s.isBlank());
    }

    private static List<FairTest.Drift> drifts(Comparison comparison, List<Metric> metrics) {
        if (comparison == null) {
            return List.of();
        }
        return metrics.stream().map(comparison::metric).flatMap(Optional::stream)
                .filter(m -> m.model() != null && m.model().driftOverSession() != null
                        && m.model().residualSd() != null)
                .map(BaySheets::drift).toList();
    }

    private static FairTest.Drift drift(MetricComparison metric) {
        return new FairTest.Drift(metric.metric(), metric.model().driftOverSession().value(),
                metric.model().residualSd());
    }

    /** Grips blown on can twist: a mark across grip and shaft tells, once a stint. */
    private static String twistReminder(ClubTest test) {
        Optional<Stint> hand = test.stintInHand();
        boolean blownOn = hand.flatMap(stint -> mounting(test, stint))
                .filter(m -> m == PhysicalClub.Mounting.BLOWN_ON).isPresent();
        boolean looked = hand.map(s -> s.notes().stream().anyMatch(n -> n.kind() == Note.Kind.TWIST_CHECKED))
                .orElse(false);
        return blownOn && !looked ? "Grip blown on: is the mark across grip and shaft still in line?" : "";
    }

    private static Optional<PhysicalClub.Mounting> mounting(ClubTest test, Stint stint) {
        String own = stint.physicalClubId() != null ? stint.physicalClubId()
                : test.configuration(stint.configurationId()).map(c -> c.physicalClubId()).orElse(null);
        return test.physicalClubs().stream().filter(c -> c.id().equals(own)).map(PhysicalClub::mounting).findFirst();
    }

    private static boolean hasRehearsal(Session session) {
        return session.tray().stream().anyMatch(Shot::rehearsal) || session.tests().stream()
                .flatMap(t -> t.stints().stream()).flatMap(s -> s.shots().stream()).anyMatch(Shot::rehearsal);
    }

    private static String empty(ClubTest test) {
        if (test.configurations().isEmpty()) {
            return "Nothing to hit yet. Here the stints of the test will be played; choose the grips in Plan first "
                    + "(Alt+2).";
        }
        return test.stints().isEmpty() ? "No stint is planned. Make the order in Plan (Alt+2), or press C to take a "
                + "configuration in hand." : "";
    }
}

package gripwright.session.edits;

import gripwright.model.BuildUp;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.Metric;
import gripwright.model.Plan;
import gripwright.model.Readings;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.TestClub;
import gripwright.session.Edit;
import gripwright.session.SessionStore;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** A session with one 8-iron test of three configurations, as the edits' tests begin with. */
final class Bay {

    static final String TEST = "test-1";
    static final Instant NOON = Instant.parse("2026-03-31T12:00:00Z");

    private final SessionStore store;

    Bay() {
        ClubTest test = ClubTest.empty(TEST, TestClub.named(ClubKind.IRON, "8-iron"))
                .withConfigurations(List.of(configuration(0, "A").withGamer(true), configuration(1, "B"),
                        configuration(2, "C")));
        store = new SessionStore(Session.blank("s", LocalDate.of(2026, 3, 31)).withTests(List.of(test)));
    }

    static Configuration configuration(int index, String label) {
        return Configuration.ofIndex(index, label.toLowerCase(java.util.Locale.ROOT), label,
                Grip.weighed("grip-" + label, "Invented grip " + label, 50), BuildUp.none());
    }

    static Shot shot(String id) {
        return Shot.of(id, Readings.of(Metric.CLUB_SPEED, 38)).withAt(NOON);
    }

    /** Queue of the plan ABC CBA with the first stint in hand. */
    Bay started() {
        apply(OrderEdits.makeOrder(TEST, Plan.usual().withOrder(Plan.Order.MIRRORED).withRounds(2)));
        apply(QueueEdits.of(TEST).start(test().stints().get(0).id(), NOON));
        return this;
    }

    boolean apply(Edit edit) {
        return store.apply(edit);
    }

    Bay hit(String... ids) {
        for (String id : ids) {
            apply(PlayEdits.of(TEST).takeIn(List.of(shot(id))));
        }
        return this;
    }

    SessionStore store() {
        return store;
    }

    Session session() {
        return store.session();
    }

    ClubTest test() {
        return session().tests().get(0);
    }

    List<String> ids(int stint) {
        return test().stints().get(stint).shots().stream().map(Shot::id).toList();
    }

    /** Labels of the stints in order, 'A B C'. */
    String queue() {
        return String.join(" ", test().stints().stream()
                .map(stint -> test().configuration(stint.configurationId()).orElseThrow().label()).toList());
    }
}

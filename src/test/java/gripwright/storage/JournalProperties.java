package gripwright.storage;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gripwright.model.Session;
import gripwright.model.SessionArbitraries;
import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds for every journal: it is replayed to the last session kept, and damage is never more than it must be. */
class JournalProperties {

    private final ObjectMapper mapper = Json.mapper();
    private final TreeChanges differences = new TreeChanges(mapper);
    private final JournalRecord records = new JournalRecord(mapper);

    @Provide
    Arbitrary<Session> sessions() {
        return SessionArbitraries.sessions();
    }

    /** Two sessions that share much, as before and after an edit do. */
    @Provide
    Arbitrary<List<Session>> edited() {
        return Arbitraries.longs().map(seed -> {
            Session one = SessionArbitraries.session(seed);
            Session other = SessionArbitraries.session(seed + 1);
            return List.of(one, one.withTray(other.tray()), one.withTray(other.tray()).withPlayer(other.player()),
                    one.withTests(other.tests()), other);
        });
    }

    @Property(tries = 200)
    void changesLeadFromAnySessionToAnyOther(@ForAll("sessions") Session before, @ForAll("sessions") Session after)
            throws Exception {
        ObjectNode tree = mapper.valueToTree(before);
        JsonNode changes = mapper.readTree(mapper.writeValueAsBytes(differences.between(before, after)));
        differences.apply(tree, changes);
        assertThat(mapper.treeToValue(mapper.readTree(Json.line(mapper, tree)), Session.class)).isEqualTo(after);
        assertThat(differences.between(after, after)).isEmpty();
    }

    @Property(tries = 100)
    void aJournalGivesBackTheLastSession(@ForAll("edited") List<Session> sessions) {
        JournalReplay.Replayed replayed = new JournalReplay().replay(journal(sessions));
        assertThat(replayed.session()).contains(sessions.get(sessions.size() - 1));
        assertThat(replayed.damaged()).isFalse();
    }

    @Property(tries = 100)
    void aJournalCutAnywhereGivesASessionThatHadBeenKept(@ForAll("edited") List<Session> sessions, @ForAll int where) {
        byte[] whole = journal(sessions);
        int length = Math.floorMod(where, whole.length);
        JournalReplay.Replayed replayed = new JournalReplay().replay(Arrays.copyOf(whole, length));
        replayed.session().ifPresent(session -> assertThat(sessions).contains(session));
        assertThat(replayed.damaged()).isFalse();
        int records = (int) JournalLines.read(Arrays.copyOf(whole, length)).records().size();
        if (records >= 2) {
            assertThat(replayed.session()).contains(sessions.get(Math.min(records, sessions.size() + 1) - 2));
        }
    }

    @Property(tries = 100)
    void aChangedByteIsFoundOutAndWhatStoodBeforeItCounts(@ForAll("edited") List<Session> sessions,
            @ForAll int where, @ForAll byte what) {
        byte[] bytes = journal(sessions);
        int place = Math.floorMod(where, bytes.length);
        boolean changed = bytes[place] != what;
        bytes[place] = what;
        JournalReplay.Replayed replayed = new JournalReplay().replay(bytes);
        replayed.session().ifPresent(session -> assertThat(sessions).contains(session));
        boolean lastLineEnd = place == bytes.length - 1;
        assertThat(replayed.damaged() || !changed || lastLineEnd).isTrue();
    }

    @Property(tries = 500)
    void randomBytesNeverStopTheReplay(@ForAll byte[] bytes) {
        JournalReplay.Replayed replayed = new JournalReplay().replay(bytes);
        assertThat(replayed.session()).isEmpty();
        assertThat(replayed.file()).isEmpty();
    }

    @Property(tries = 50)
    void itsOwnFilesAreKnownAgain(@ForAll("edited") List<Session> sessions, @ForAll("sessions") Session other) {
        byte[] journal = journal(sessions);
        SessionFile files = new SessionFile();
        for (Session session : sessions) {
            assertThat(new JournalReplay().passedThrough(journal, files.bytes(session))).isTrue();
        }
        boolean known = sessions.contains(other);
        assertThat(new JournalReplay().passedThrough(journal, files.bytes(other))).isEqualTo(known);
        assertThat(new JournalReplay().passedThrough(journal, new byte[] {'{'})).isFalse();
    }

    private byte[] journal(List<Session> sessions) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(records.head(java.time.Instant.EPOCH, Party.ofThisProcess()));
        bytes.writeBytes(records.session(sessions.get(0)));
        for (int index = 1; index < sessions.size(); index++) {
            bytes.writeBytes(records.changes(differences.between(sessions.get(index - 1), sessions.get(index))));
        }
        return bytes.toByteArray();
    }
}

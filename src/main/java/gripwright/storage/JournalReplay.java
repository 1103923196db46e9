package gripwright.storage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.session.FileState;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a journal back into the session as it was last kept, past whatever is damaged in it. */
final class JournalReplay {

    /**
     * What a journal holds.
     *
     * @param session as it was last kept; empty where none can be read
     * @param file the file it had, if any
     * @param damaged whether something that had been kept could not be read
     * @param newer whether a newer version of the program wrote it
     * @param party who wrote it; empty where that can't be read
     */
    record Replayed(Optional<Session> session, Optional<FileState> file, boolean damaged, boolean newer,
            Optional<Party> party) {
    }

    private final ObjectMapper mapper = Json.mapper();
    private final TreeChanges differences = new TreeChanges(mapper);
    private final SessionFile sessions = new SessionFile();

    /** Replays a journal's bytes; never fails, whatever they are. */
    Replayed replay(byte[] bytes) {
        JournalLines.Lines lines = JournalLines.read(bytes);
        List<JsonNode> records = new ArrayList<>();
        boolean damaged = !lines.gaps().isEmpty();
        int index = 0;
        for (byte[] line : lines.records()) {
            if (lines.gaps().contains(index++)) {
                records.add(mapper.nullNode());
            }
            try {
                records.add(mapper.readTree(line));
            } catch (IOException e) {
                records.add(mapper.nullNode());
                damaged = true;
            }
        }
        int sessionVersion = SessionFile.FORMAT_VERSION;
        Optional<Party> party = Optional.empty();
        for (JsonNode record : records) {
            if (is(record, JournalRecord.HEAD)) {
                sessionVersion = record.path(JournalRecord.SESSION_VERSION).asInt(sessionVersion);
                party = Optional.of(new Party("", record.path("computer").asText(), record.path("process").asLong()));
                if (record.path(JournalRecord.JOURNAL_VERSION).asInt() > JournalRecord.VERSION
                        || sessionVersion > SessionFile.FORMAT_VERSION) {
                    return new Replayed(Optional.empty(), Optional.empty(), false, true, party);
                }
            }
        }
        return played(records, sessionVersion, damaged, party);
    }

    /** Whether the journal's session once was what this session file holds: then this journal's window wrote it. */
    boolean passedThrough(byte[] journal, byte[] sessionFile) {
        try {
            JsonNode sought = mapper.readTree(sessionFile).path("session");
            ObjectNode tree = null;
            for (byte[] line : JournalLines.read(journal).records()) {
                JsonNode record = mapper.readTree(line);
                if (is(record, JournalRecord.SESSION)) {
                    tree = (ObjectNode) record.get(JournalRecord.SESSION);
                } else if (is(record, JournalRecord.CHANGES) && !applied(tree, record.get(JournalRecord.CHANGES))) {
                    return false;
                }
                if (sought.equals(tree)) {
                    return true;
                }
            }
            return false;
        } catch (IOException | ClassCastException e) {
            return false;
        }
    }

    private Replayed played(List<JsonNode> records, int sessionVersion, boolean damaged, Optional<Party> party) {
        Optional<FileState> file = Optional.empty();
        ObjectNode tree = null;
        boolean whole = false;
        boolean lost = damaged;
        for (JsonNode record : records) {
            if (is(record, JournalRecord.SESSION) && record.get(JournalRecord.SESSION) instanceof ObjectNode session) {
                tree = session;
                whole = true;
            } else if (is(record, JournalRecord.FILE)) {
                file = file(record);
            } else if (is(record, JournalRecord.CHANGES)) {
                whole = whole && applied(tree, record.get(JournalRecord.CHANGES));
                lost = lost || !whole;
            } else if (record.isNull()) {
                // Changes after a gap can't be trusted to fit; only a whole session mends it.
                whole = false;
            }
        }
        Optional<Session> session = tree == null ? Optional.empty() : session(tree, sessionVersion);
        return new Replayed(session, file, lost || tree != null && session.isEmpty(), false, party);
    }

    private boolean applied(ObjectNode tree, JsonNode changes) {
        if (tree == null) {
            return false;
        }
        try {
            differences.apply(tree, changes);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private Optional<Session> session(ObjectNode tree, int version) {
        ObjectNode document = mapper.createObjectNode();
        document.put("kind", "session");
        document.put("formatVersion", version);
        document.set("session", tree);
        try {
            byte[] bytes = Json.line(mapper, document);
            return Optional.of(sessions.parse(bytes, "journal").value());
        } catch (ProblemException | JsonProcessingException e) {
            return Optional.empty();
        }
    }

    private static Optional<FileState> file(JsonNode record) {
        try {
            return Optional.of(new FileState(Path.of(record.path(JournalRecord.FILE).asText()),
                    record.path(JournalRecord.FINGERPRINT).asText()));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static boolean is(JsonNode record, String kind) {
        return kind.equals(record.path(JournalRecord.KIND).asText());
    }
}

package gripwright.storage;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import gripwright.model.Session;
import gripwright.session.FileState;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The records of a journal: a head, the whole session, changes of it, and the file it has. */
final class JournalRecord {

    /** The version of the records; a newer one is left untouched. */
    static final int VERSION = 1;

    static final String KIND = "record";
    static final String HEAD = "head";
    static final String SESSION = "session";
    static final String CHANGES = "changes";
    static final String FILE = "file";
    static final String FINGERPRINT = "fingerprint";
    static final String JOURNAL_VERSION = "journalVersion";
    static final String SESSION_VERSION = "sessionFormatVersion";

    private final ObjectMapper mapper;

    JournalRecord(ObjectMapper mapper) {
        this.mapper = mapper;
    }

    /** What the journal is and who writes it. */
    byte[] head(Instant began, Party party) {
        Map<String, Object> record = of(HEAD);
        record.put(JOURNAL_VERSION, VERSION);
        record.put(SESSION_VERSION, SessionFile.FORMAT_VERSION);
        record.put("began", began);
        record.put("computer", party.computer());
        record.put("process", party.process());
        return line(record);
    }

    byte[] session(Session session) {
        Map<String, Object> record = of(SESSION);
        record.put(SESSION, session);
        return line(record);
    }

    byte[] changes(List<Map<String, Object>> changes) {
        Map<String, Object> record = of(CHANGES);
        record.put(CHANGES, changes);
        return line(record);
    }

    byte[] file(FileState file) {
        Map<String, Object> record = of(FILE);
        record.put(FILE, file.path().toAbsolutePath().toString());
        record.put(FINGERPRINT, file.fingerprint());
        return line(record);
    }

    private static Map<String, Object> of(String kind) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put(KIND, kind);
        return record;
    }

    private byte[] line(Map<String, Object> record) {
        try {
            return JournalLines.frame(Json.line(mapper, record));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("A record of the journal can't be written as JSON.", e);
        }
    }
}

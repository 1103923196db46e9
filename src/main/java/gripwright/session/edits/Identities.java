package gripwright.session.edits;

import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.Shot;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;

/** Names for new shots, stints, configurations and tests that the session does not have yet. */
public final class Identities {

    private Identities() {
    }

    /** A name for one more stint of a test. */
    public static String newStint(ClubTest test) {
        return free("stint", test.stints().stream().map(stint -> stint.id()));
    }

    /** A name for one more configuration of a test. */
    public static String newConfiguration(ClubTest test) {
        return free("configuration", test.configurations().stream().map(configuration -> configuration.id()));
    }

    /** A label for one more configuration of a test: the first letter that is free, then numbers. */
    public static String newLabel(ClubTest test) {
        Set<String> taken = new HashSet<>();
        test.configurations().forEach(configuration -> taken.add(configuration.label()));
        for (char letter = 'A'; letter <= 'Z'; letter++) {
            if (!taken.contains(String.valueOf(letter))) {
                return String.valueOf(letter);
            }
        }
        int number = 1;
        while (taken.contains("A" + number)) {
            number++;
        }
        return "A" + number;
    }

    /** A name for one more test of a session. */
    public static String newTest(Session session) {
        return free("test", session.tests().stream().map(ClubTest::id));
    }

    /** A name for one more club of the set. */
    public static String newSetClub(Session session) {
        return free("set", session.set().stream().map(club -> club.id()));
    }

    /** Every shot of the session, those in the tray last. */
    static Stream<Shot> shots(Session session) {
        return Stream.concat(session.tests().stream().flatMap(test -> test.stints().stream())
                .flatMap(stint -> stint.shots().stream()), session.tray().stream());
    }

    /** A name for one more shot of the session. */
    public static String newShot(Session session) {
        return free("shot", shots(session).map(Shot::id));
    }

    private static String free(String kind, Stream<String> taken) {
        String prefix = kind + "-";
        long highest = taken.filter(name -> name.startsWith(prefix)).mapToLong(name -> number(name, prefix)).max()
                .orElse(0);
        return prefix + (highest + 1);
    }

    /** The number after the prefix; names of other programs that merely begin alike count as none. */
    private static long number(String name, String prefix) {
        String digits = name.substring(prefix.length());
        return digits.matches("\\d{1,15}") ? Long.parseLong(digits) : 0;
    }
}

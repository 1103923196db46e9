package gripwright.desktop.bay;

import gripwright.model.Session;
import gripwright.model.Stint;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** How long a session has been played, in words: to now while it is played, else to its last shot. */
final class ElapsedTime {

    /** After this silence nobody is in the bay any more. */
    private static final Duration OVER = Duration.ofHours(2);

    private ElapsedTime() {
    }

    /** '24 min', '1 h 05 min'; empty before the first stint. */
    static String of(Session session, Instant now) {
        Optional<Instant> first = moments(session).min(Instant::compareTo);
        Optional<Instant> last = moments(session).max(Instant::compareTo);
        if (first.isEmpty()) {
            return "";
        }
        boolean over = Duration.between(last.get(), now).compareTo(OVER) > 0;
        long minutes = Math.max(0, Duration.between(first.get(), over ? last.get() : now).toMinutes());
        return minutes < 60 ? minutes + " min" : String.format("%d h %02d min", minutes / 60, minutes % 60);
    }

    private static Stream<Instant> moments(Session session) {
        return session.tests().stream().flatMap(test -> test.stints().stream()).flatMap(ElapsedTime::moments)
                .filter(Objects::nonNull);
    }

    private static Stream<Instant> moments(Stint stint) {
        Stream<Instant> shots = stint.shots().isEmpty() ? Stream.empty()
                : Stream.of(stint.shots().get(0).at(), stint.shots().get(stint.shots().size() - 1).at());
        return Stream.concat(Stream.of(stint.started(), stint.ended()), shots);
    }
}

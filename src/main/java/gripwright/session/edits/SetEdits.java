package gripwright.session.edits;

import gripwright.model.SetClub;
import gripwright.model.Session;
import gripwright.session.Edit;
import java.util.List;

/** What can be done with the player's set on its way over the bench. */
public final class SetEdits {

    private SetEdits() {
    }

    /** One more club at the end; an identity that is taken is replaced. */
    public static Edit add(SetClub club) {
        return new Edit("Add the " + club.name(), session -> {
            boolean taken = session.set().stream().anyMatch(one -> one.id().equals(club.id()));
            SetClub added = taken ? club.withId(Identities.newSetClub(session)) : club;
            return session.withSet(Places.inserted(session.set(), session.set().size(), added));
        });
    }

    /** Replaces the club of the same identity. */
    public static Edit change(SetClub club) {
        return new Edit("Change the " + club.name(), session -> session.withSet(session.set().stream()
                .map(one -> one.id().equals(club.id()) ? club : one).toList()));
    }

    /** Takes a club out of the set. */
    public static Edit remove(Session before, String clubId) {
        return new Edit("Remove the " + name(before, clubId), session -> session.withSet(session.set().stream()
                .filter(one -> !one.id().equals(clubId)).toList()));
    }

    /** Moves a club to another place. */
    public static Edit move(Session before, String clubId, int toIndex) {
        return new Edit("Move the " + name(before, clubId), session -> session.withSet(Places.moved(session.set(),
                session.set().stream().map(SetClub::id).toList().indexOf(clubId), toIndex)));
    }

    /** The whole set at once. */
    public static Edit set(List<SetClub> clubs) {
        return new Edit("Change the set", session -> session.withSet(clubs));
    }

    private static String name(Session session, String clubId) {
        return session.set().stream().filter(one -> one.id().equals(clubId)).map(SetClub::name).findFirst()
                .orElse("club");
    }
}

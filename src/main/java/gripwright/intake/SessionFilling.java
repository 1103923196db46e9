package gripwright.intake;

import gripwright.model.BuildUp;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Grip;
import gripwright.model.GripCondition;
import gripwright.model.Problem;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Puts the shots of an intake into a session: a whole test with its configurations and stints, or into the stint in
 * hand.
 *
 * <p>Identities that are invented follow from the file's own labels, so that the same file gives the same session.
 *
 * @param session the session with the shots in place
 * @param problems what is worth a look
 */
public record SessionFilling(Session session, List<Problem> problems) {

    private static final double USUAL_LENGTH_MM = 268;
    private static final double USUAL_CAP_MM = 4;

    public SessionFilling {
        problems = List.copyOf(problems);
    }

    /**
     * Fills a test with the rows of a file that names the configuration of each shot. Configurations and stints that the
     * test has already are found by their labels; others are added. Without a stint column each run of rows with one
     * configuration is a stint.
     *
     * @throws IllegalArgumentException if the session has no such test
     */
    public static SessionFilling wholeTest(Session session, String testId, IntakeResult intake) {
        ClubTest test = session.test(testId).orElseThrow(() -> new IllegalArgumentException(
                "The session has no test '" + testId + "' to fill."));
        List<Problem> problems = new ArrayList<>();
        Filler filler = new Filler(test, intake.source(), problems);
        intake.rows().forEach(filler::add);
        return new SessionFilling(session.withTest(filler.filled()), problems);
    }

    /**
     * Adds the shots of a file to one stint, in the order of the file.
     *
     * @throws IllegalArgumentException if the session has no such test or stint
     */
    public static SessionFilling intoStint(Session session, String testId, String stintId, IntakeResult intake) {
        ClubTest test = session.test(testId).orElseThrow(() -> new IllegalArgumentException(
                "The session has no test '" + testId + "' to fill."));
        Stint stint = test.stint(stintId).orElseThrow(() -> new IllegalArgumentException(
                "The test has no stint '" + stintId + "' to fill."));
        List<Shot> shots = new ArrayList<>(stint.shots());
        shots.addAll(intake.shots());
        Stint filled = stint.withShots(shots);
        if (filled.started() == null && !intake.shots().isEmpty()) {
            filled = filled.withStarted(intake.shots().get(0).at());
        }
        return new SessionFilling(session.withTest(test.withStint(filled)), List.of());
    }

    /** A short label from a file's text that is fit to be an identity. */
    static String slug(String text) {
        String slug = text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}+]+", "-").replaceAll("^-+|-+$", "");
        return slug.isEmpty() ? "x" : slug;
    }

    /** Builds one test row by row. */
    private static final class Filler {

        private final ClubTest test;
        private final String source;
        private final List<Problem> problems;
        private final List<Configuration> configurations;
        private final List<Draft> stints = new ArrayList<>();
        private Draft last;
        private String lastStintText;

        Filler(ClubTest test, String source, List<Problem> problems) {
            this.test = test;
            this.source = source;
            this.problems = problems;
            this.configurations = new ArrayList<>(test.configurations());
            test.stints().forEach(stint -> stints.add(new Draft(stint)));
            last = stints.isEmpty() ? null : stints.get(stints.size() - 1);
        }

        void add(IntakeRow row) {
            if (row.configuration().isEmpty()) {
                problems.add(new Problem(Problem.Severity.REJECTED, source, row.line(), null, "",
                        "The line does not say which configuration the shot was hit with, so it has no place in the "
                                + "test. Write the configuration's label and read the file again."));
                return;
            }
            Configuration configuration = configuration(row.configuration());
            draft(row, configuration).add(row);
            lastStintText = row.stint();
        }

        private Configuration configuration(String label) {
            for (Configuration configuration : configurations) {
                if (configuration.label().equalsIgnoreCase(label)) {
                    return configuration;
                }
            }
            String id = unusedConfigurationId("configuration-" + slug(label));
            Grip grip = new Grip("grip-" + slug(label), "Grip " + label, "", null, null, null, USUAL_LENGTH_MM,
                    USUAL_CAP_MM, null, List.of(), null, false, null, null, false, GripCondition.FRESH, null, null, "");
            Configuration added = Configuration.ofIndex(configurations.size(), id, label, grip, BuildUp.none());
            configurations.add(added);
            return added;
        }

        private String unusedConfigurationId(String wanted) {
            String id = wanted;
            for (int n = 2; hasConfiguration(id); n++) {
                id = wanted + "-" + n;
            }
            return id;
        }

        private boolean hasConfiguration(String id) {
            return configurations.stream().anyMatch(c -> c.id().equals(id));
        }

        private Draft draft(IntakeRow row, Configuration configuration) {
            String wanted = row.stint().isEmpty() ? null : "stint-" + slug(row.stint());
            if (wanted == null) {
                boolean goesOn = last != null && last.stint.configurationId().equals(configuration.id());
                return goesOn ? last : begin("stint-" + (stints.size() + 1), row, configuration);
            }
            Optional<Draft> there = stints.stream().filter(d -> d.stint.id().equals(wanted)
                    || d.stint.id().startsWith(wanted + "-again")).reduce((a, b) -> b);
            if (there.isPresent() && there.get().stint.configurationId().equals(configuration.id())) {
                last = there.get();
                return last;
            }
            if (there.isPresent() && row.stint().equals(lastStintText)) {
                problems.add(new Problem(Problem.Severity.NOTE, source, row.line(), null, row.configuration(),
                        "Stint '" + row.stint() + "' changes its configuration here; the shots from here on were taken "
                                + "as a stint of their own."));
            }
            return begin(there.isPresent() ? wanted + "-again" : wanted, row, configuration);
        }

        private Draft begin(String wantedId, IntakeRow row, Configuration configuration) {
            String id = wantedId;
            for (int n = 2; hasStint(id); n++) {
                id = wantedId + "-" + n;
            }
            Draft before = stints.isEmpty() ? null : stints.get(stints.size() - 1);
            boolean same = before != null && before.stint.configurationId().equals(configuration.id());
            boolean changed = row.changedBefore() != null ? row.changedBefore() : !same;
            if (same && row.changedBefore() == null) {
                problems.add(new Problem(Problem.Severity.NOTE, source, row.line(), null, row.stint(),
                        "Two stints in a row have configuration " + configuration.label() + ". They count as one unless "
                                + "the grip or the club was changed in between; say so at the stint if it was."));
            }
            Stint.Kind kind = row.kind() == Stint.Kind.WARM_UP ? Stint.Kind.WARM_UP : Stint.Kind.SCORED;
            Stint stint = Stint.planned(id, configuration.id(), kind, 0, 0).withState(Stint.State.DONE)
                    .withChangedBefore(changed);
            last = new Draft(stint);
            last.isNew = true;
            stints.add(last);
            return last;
        }

        private boolean hasStint(String id) {
            return stints.stream().anyMatch(d -> d.stint.id().equals(id));
        }

        ClubTest filled() {
            return test.withConfigurations(configurations).withStints(stints.stream().map(Draft::filled).toList());
        }
    }

    /** A stint that is being filled. */
    private static final class Draft {

        private final Stint stint;
        private final List<Shot> shots;
        private boolean isNew;
        private int rows;
        private int settling;
        private boolean scoredSeen;

        Draft(Stint stint) {
            this.stint = stint;
            this.shots = new ArrayList<>(stint.shots());
        }

        void add(IntakeRow row) {
            rows++;
            shots.add(row.shot());
            if (row.kind() == Stint.Kind.SETTLING && !scoredSeen) {
                settling++;
            } else {
                scoredSeen = true;
            }
        }

        Stint filled() {
            if (rows == 0) {
                return stint;
            }
            Stint filled = stint.withShots(shots);
            if (filled.state() == Stint.State.PLANNED) {
                filled = filled.withState(Stint.State.DONE);
            }
            if (isNew) {
                filled = scoredSeen ? filled.withSettlingSwings(settling).withPlannedShots(shots.size() - settling)
                        : filled.withKind(Stint.Kind.SETTLING).withPlannedShots(shots.size());
            }
            Instant first = shots.get(0).at();
            Instant end = shots.get(shots.size() - 1).at();
            return filled.started() == null ? filled.withStarted(first).withEnded(end) : filled.withEnded(end);
        }
    }
}

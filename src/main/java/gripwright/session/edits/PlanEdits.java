package gripwright.session.edits;

import gripwright.model.ClubReading;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Plan;
import gripwright.model.Session;
import gripwright.model.Stint;
import gripwright.session.Edit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What can be done with the test matrix: configurations, reference, gamer. */
public final class PlanEdits {

    private PlanEdits() {
    }

    /** One more configuration at the end. */
    public static Edit add(String testId, Configuration configuration) {
        return new Edit("Add configuration " + configuration.label(),
                session -> Places.changeTest(session, testId, test -> test.withConfigurations(
                        Places.inserted(test.configurations(), test.configurations().size(), configuration))));
    }

    /** Replaces the configuration of the same identity. */
    public static Edit change(String testId, Configuration configuration) {
        return new Edit("Change configuration " + configuration.label(),
                session -> Places.changeTest(session, testId, test -> test.withConfiguration(configuration)));
    }

    /**
     * Takes a configuration out, with the stints that are planned for it; where it was the reference or the advised
     * one, none is. The edit throws an {@link IllegalArgumentException} when shots were hit with it.
     */
    public static Edit remove(Session before, String testId, String configurationId) {
        return new Edit("Remove configuration " + Places.label(before, testId, configurationId), session -> {
            Session changed = Places.changeTest(session, testId, test -> without(test, configurationId));
            return configurationId.equals(session.advisedConfigurationId()) && !has(changed, configurationId)
                    ? changed.withAdvisedConfigurationId(null) : changed;
        });
    }

    /** Moves a configuration to another column; it keeps its colour and marker. */
    public static Edit move(Session before, String testId, String configurationId, int toIndex) {
        return new Edit("Move configuration " + Places.label(before, testId, configurationId),
                session -> Places.changeTest(session, testId, test -> test.withConfigurations(Places.moved(
                        test.configurations(), indexOf(test, configurationId), toIndex))));
    }

    /** What the others are compared with; null for the gamer, else the first. */
    public static Edit reference(Session before, String testId, String configurationId) {
        String name = configurationId == null ? "the gamer" : Places.label(before, testId, configurationId);
        return new Edit("Compare with " + name,
                session -> Places.changeTest(session, testId, test -> test.withReferenceId(configurationId)));
    }

    /** What the player plays now; null for none of them. Any other stops being it. */
    public static Edit gamer(Session before, String testId, String configurationId) {
        String name = configurationId == null ? "No configuration" : Places.label(before, testId, configurationId);
        return new Edit(name + " is the gamer", session -> Places.changeTest(session, testId,
                test -> test.withConfigurations(test.configurations().stream()
                        .map(one -> one.withGamer(one.id().equals(configurationId))).toList())));
    }

    /** How the test is meant to be hit; the queue of stints stays until an order is made. */
    public static Edit plan(String testId, Plan plan) {
        return new Edit("Change the plan",
                session -> Places.changeTest(session, testId, test -> test.withPlan(plan)));
    }

    private static ClubTest without(ClubTest test, String configurationId) {
        Optional<Configuration> gone = test.configuration(configurationId);
        if (gone.isEmpty()) {
            return test;
        }
        List<Stint> others = test.stints().stream()
                .filter(stint -> !stint.configurationId().equals(configurationId)).toList();
        boolean hit = test.stints().stream().anyMatch(stint -> stint.configurationId().equals(configurationId)
                && !stint.shots().isEmpty());
        if (hit) {
            throw new IllegalArgumentException("Configuration " + gone.get().label()
                    + " has shots; move or delete them before it is removed.");
        }
        List<ClubReading> readings = test.club().readings().stream()
                .map(reading -> configurationId.equals(reading.configurationId())
                        ? reading.withConfigurationId(null) : reading).toList();
        String reference = Objects.equals(test.referenceId(), configurationId) ? null : test.referenceId();
        return test.withReferenceId(reference).withStints(others).withClub(test.club().withReadings(readings))
                .withConfigurations(test.configurations().stream()
                        .filter(one -> !one.id().equals(configurationId)).toList());
    }

    private static boolean has(Session session, String configurationId) {
        return session.tests().stream().anyMatch(test -> test.configuration(configurationId).isPresent());
    }

    private static int indexOf(ClubTest test, String configurationId) {
        return test.configurations().stream().map(Configuration::id).toList().indexOf(configurationId);
    }
}

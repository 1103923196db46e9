package gripwright.model;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One test: a test club with its configurations, plan and stints. Readings of different clubs never meet.
 *
 * @param id unique in its session
 * @param club the club
 * @param physicalClubs the clubs one can hold; may be empty where it does not matter
 * @param configurations the columns of the test matrix
 * @param referenceId the configuration that the others are compared with; null for the gamer, else the first
 * @param plan how it is meant to be hit
 * @param stints in order of play, planned ones last
 */
public record ClubTest(String id, TestClub club, List<PhysicalClub> physicalClubs, List<Configuration> configurations,
        String referenceId, Plan plan, List<Stint> stints) {

    /** A test of this club with nothing in it yet. */
    public static ClubTest empty(String id, TestClub club) {
        return new ClubTest(id, club, List.of(), List.of(), null, Plan.usual(), List.of());
    }

    public ClubTest {
        Check.text(id, "identity of a test");
        Check.present(club, "club of a test");
        physicalClubs = Check.list(physicalClubs);
        configurations = Check.list(configurations);
        Check.present(plan, "plan of a test");
        stints = Check.list(stints);
        Set<String> ids = new HashSet<>();
        Set<String> labels = new HashSet<>();
        for (Configuration configuration : configurations) {
            if (!ids.add(configuration.id()) || !labels.add(configuration.label())) {
                throw new IllegalArgumentException("Two configurations of the " + club.name() + " test share the label "
                        + configuration.label() + " or an identity; give each its own.");
            }
        }
        Set<String> stintIds = new HashSet<>();
        for (Stint stint : stints) {
            if (!ids.contains(stint.configurationId())) {
                throw new IllegalArgumentException("A stint of the " + club.name()
                        + " test is hit with a configuration that the test does not have.");
            }
            if (!stintIds.add(stint.id())) {
                throw new IllegalArgumentException("Two stints of the " + club.name() + " test share an identity.");
            }
        }
        if (referenceId != null && !ids.contains(referenceId)) {
            throw new IllegalArgumentException("The reference of the " + club.name()
                    + " test is a configuration that the test does not have.");
        }
    }

    /** The configuration with this identity. */
    public Optional<Configuration> configuration(String configurationId) {
        return configurations.stream().filter(c -> c.id().equals(configurationId)).findFirst();
    }

    /** The configuration with this label, letter case ignored. */
    public Optional<Configuration> labelled(String label) {
        return configurations.stream().filter(c -> c.label().equalsIgnoreCase(label)).findFirst();
    }

    /** The reference: the chosen one, else the gamer, else the first; empty where there is no configuration. */
    public Optional<Configuration> reference() {
        if (referenceId != null) {
            return configuration(referenceId);
        }
        return configurations.stream().filter(Configuration::gamer).findFirst()
                .or(() -> configurations.stream().findFirst());
    }

    /** The stint with this identity. */
    public Optional<Stint> stint(String stintId) {
        return stints.stream().filter(s -> s.id().equals(stintId)).findFirst();
    }

    /** The stint in hand. */
    public Optional<Stint> stintInHand() {
        return stints.stream().filter(s -> s.state() == Stint.State.IN_HAND).findFirst();
    }

    /** This test with one stint, found by its identity, replaced. */
    public ClubTest withStint(Stint changed) {
        return withStints(stints.stream().map(s -> s.id().equals(changed.id()) ? changed : s).toList());
    }

    /** This test with one configuration, found by its identity, replaced. */
    public ClubTest withConfiguration(Configuration changed) {
        return withConfigurations(
                configurations.stream().map(c -> c.id().equals(changed.id()) ? changed : c).toList());
    }

    public ClubTest withId(String id) {
        return new ClubTest(id, club, physicalClubs, configurations, referenceId, plan, stints);
    }

    public ClubTest withClub(TestClub club) {
        return new ClubTest(id, club, physicalClubs, configurations, referenceId, plan, stints);
    }

    public ClubTest withPhysicalClubs(List<PhysicalClub> physicalClubs) {
        return new ClubTest(id, club, physicalClubs, configurations, referenceId, plan, stints);
    }

    public ClubTest withConfigurations(List<Configuration> configurations) {
        return new ClubTest(id, club, physicalClubs, configurations, referenceId, plan, stints);
    }

    public ClubTest withReferenceId(String referenceId) {
        return new ClubTest(id, club, physicalClubs, configurations, referenceId, plan, stints);
    }

    public ClubTest withPlan(Plan plan) {
        return new ClubTest(id, club, physicalClubs, configurations, referenceId, plan, stints);
    }

    /**
     * This test as it is compared: without rehearsal shots where it holds real ones, as if they had never been hit; a test
     * that was only rehearsed stays as it is.
     */
    public ClubTest withoutRehearsals() {
        List<Shot> all = stints.stream().flatMap(s -> s.shots().stream()).toList();
        if (all.stream().noneMatch(Shot::rehearsal) || all.stream().allMatch(Shot::rehearsal)) {
            return this;
        }
        return withStints(stints.stream()
                .map(s -> s.withShots(s.shots().stream().filter(shot -> !shot.rehearsal()).toList())).toList());
    }

    public ClubTest withStints(List<Stint> stints) {
        return new ClubTest(id, club, physicalClubs, configurations, referenceId, plan, stints);
    }
}

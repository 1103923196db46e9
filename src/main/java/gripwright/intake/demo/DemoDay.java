package gripwright.intake.demo;

import gripwright.intake.rehearsal.SimulatedPlayer;
import gripwright.intake.rehearsal.SimulatedShot;
import gripwright.model.Configuration;
import gripwright.model.Feel;
import gripwright.model.Metric;
import gripwright.model.Note;
import gripwright.model.Plan;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import gripwright.model.Stint;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Hits the stints of a demo session with a simulated player: a warm-up, then there and back through all grips. */
final class DemoDay {

    static final Plan PLAN = new Plan(Plan.Order.MIRRORED, 3, 1, 5, 2, 1);
    static final String SOURCE = "invented.csv";

    private static final int SECONDS_BETWEEN_SHOTS = 42;
    private static final int SECONDS_FOR_A_CHANGE = 170;
    private static final double MISSING_CLOSURE = 0.05;
    private static final double MISSING_STRIKE = 0.04;

    private final SimulatedPlayer.Visit visit;
    private final Random gaps;
    private final List<Configuration> configurations;
    private final Map<String, Feel> feel;
    private final int allShots;
    private Instant clock;
    private int shotNumber;

    DemoDay(SimulatedPlayer player, List<Configuration> configurations, Map<String, Feel> feel, Instant start) {
        this.visit = player.visit();
        this.gaps = new Random(player.seed() + 1);
        this.configurations = configurations;
        this.feel = feel;
        this.clock = start;
        int perStint = PLAN.shotsPerStint() + PLAN.settlingSwings();
        this.allShots = PLAN.warmUpShots() + 2 * configurations.size() * perStint;
    }

    List<Stint> stints() {
        List<Stint> stints = new ArrayList<>();
        stints.add(warmUp());
        int count = configurations.size();
        for (int i = 0; i < 2 * count; i++) {
            stints.add(stint(i + 2, configurations.get(i < count ? i : 2 * count - 1 - i), i == count));
        }
        return List.copyOf(stints);
    }

    private Stint warmUp() {
        Configuration gamer = configurations.get(0);
        visit.beginStint(gamer.label());
        List<Shot> shots = shots(PLAN.warmUpShots());
        return Stint.planned("stint-1", gamer.id(), Stint.Kind.WARM_UP, PLAN.warmUpShots(), 0)
                .withState(Stint.State.DONE).withShots(shots).withStarted(shots.get(0).at()).withEnded(clock);
    }

    private Stint stint(int number, Configuration configuration, boolean again) {
        clock = clock.plusSeconds(SECONDS_FOR_A_CHANGE);
        visit.beginStint(configuration.label());
        List<Shot> shots = shots(PLAN.settlingSwings() + PLAN.shotsPerStint());
        List<Note> notes = new ArrayList<>();
        notes.add(new Note(shots.get(0).at().minusSeconds(SECONDS_BETWEEN_SHOTS), Note.Kind.TWIST_CHECKED,
                again ? "blown off and on again between the two stints" : "", null));
        return Stint.planned("stint-" + number, configuration.id(), Stint.Kind.SCORED, PLAN.shotsPerStint(),
                        PLAN.settlingSwings())
                .withState(Stint.State.DONE).withShots(shots).withStarted(shots.get(0).at()).withEnded(clock)
                .withPhysicalClubId(DemoBench.CLUB_ID).withChangedBefore(number > 2)
                .withFeel(number <= configurations.size() + 1 ? feel.getOrDefault(configuration.label(), Feel.unanswered())
                        : Feel.unanswered())
                .withSwingweightRead(number <= configurations.size() + 1 ? configuration.swingweightRead() : null)
                .withNotes(notes);
    }

    private List<Shot> shots(int count) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            clock = clock.plusSeconds(SECONDS_BETWEEN_SHOTS);
            SimulatedShot hit = visit.hit(shotNumber / (double) (allShots - 1));
            shotNumber++;
            ShotSource source = new ShotSource(ShotSource.Kind.FILE, SOURCE, String.valueOf(shotNumber), "", "", 0);
            shots.add(new Shot("shot-" + shotNumber, clock, asRead(hit.readings()), source,
                    hit.mishit() ? "mishit, seen before the numbers" : null, false, false, ""));
        }
        return shots;
    }

    /** To the digits a source shows; now and then one of two readings is missing. */
    private Readings asRead(Readings ideal) {
        boolean noClosure = gaps.nextDouble() < MISSING_CLOSURE;
        boolean noStrike = gaps.nextDouble() < MISSING_STRIKE;
        Readings read = Readings.none();
        for (Map.Entry<Metric, Double> entry : ideal.values().entrySet()) {
            Metric metric = entry.getKey();
            boolean missing = noClosure && metric == Metric.CLOSURE_RATE
                    || noStrike && (metric == Metric.STRIKE_SIDEWAYS || metric == Metric.STRIKE_UP);
            if (!missing) {
                double step = step(metric);
                read = read.with(metric, Math.round(entry.getValue() / step) / (1 / step));
            }
        }
        return read;
    }

    private static double step(Metric metric) {
        return switch (metric.dimension()) {
            case SPEED -> 0.01;
            case SPIN, ANGULAR_RATE -> 1;
            default -> 0.1;
        };
    }
}

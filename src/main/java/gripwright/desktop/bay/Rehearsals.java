package gripwright.desktop.bay;

import gripwright.desktop.support.Workbench;
import gripwright.intake.LiveSource;
import gripwright.intake.rehearsal.RehearsalSource;
import gripwright.intake.rehearsal.RehearsedShots;
import gripwright.intake.rehearsal.SimulatedPlayer;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** The rehearsals that can be played into the bay: a simulated player, or the shots of this session again. */
final class Rehearsals {

    private static final Duration TEN_A_MINUTE = Duration.ofSeconds(6);
    private static final Duration ONE_A_SECOND = Duration.ofSeconds(1);

    private final Workbench workbench;
    private final AtomicReference<String> labelInHand = new AtomicReference<>("");

    Rehearsals(Workbench workbench) {
        this.workbench = workbench;
        workbench.test().subscribe(test -> labelInHand.set(test == null ? "" : labelInHand(test)));
    }

    private static String labelInHand(ClubTest test) {
        return test.stintInHand().flatMap(stint -> test.configuration(stint.configurationId()))
                .map(Configuration::label).orElse("");
    }

    /** What can be rehearsed, each handed to the player when it is chosen. */
    List<Prompt.Option> options(Consumer<LiveSource> play) {
        List<Prompt.Option> options = new ArrayList<>();
        options.add(Prompt.Option.of("a simulated player, ten a minute", () -> play.accept(simulated(TEN_A_MINUTE))));
        options.add(Prompt.Option.of("one a second", () -> play.accept(simulated(ONE_A_SECOND))));
        boolean recorded = workbench.test().get().stints().stream().anyMatch(stint -> !stint.shots().isEmpty());
        if (recorded) {
            options.add(Prompt.Option.of("this session\u2019s shots again", () -> play.accept(again())));
        }
        return options;
    }

    private LiveSource simulated(Duration pace) {
        String run = newRun();
        SimulatedPlayer player = SimulatedPlayer.middling(workbench.session().get().player().hand(), run.hashCode());
        int planned = workbench.test().get().stints().stream()
                .mapToInt(stint -> stint.plannedShots() + stint.settlingSwings()).sum();
        return new RehearsalSource(RehearsedShots.of(player, labelInHand::get, Math.max(2, planned)), pace, run);
    }

    private LiveSource again() {
        return new RehearsalSource(RehearsedShots.of(workbench.test().get()), TEN_A_MINUTE, newRun());
    }

    private static String newRun() {
        return UUID.randomUUID().toString();
    }
}

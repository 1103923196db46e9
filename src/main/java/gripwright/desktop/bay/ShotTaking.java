package gripwright.desktop.bay;

import gripwright.desktop.support.Workbench;
import gripwright.intake.Arrival;
import gripwright.intake.IntakeRow;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Takes shots in, whether typed, pasted or brought by a source; each keeps where it came from. */
final class ShotTaking {

    private static final ShotSource PASTE = new ShotSource(ShotSource.Kind.PASTE, "paste", "", "", "", 0);

    private final BayViewModel bay;
    private final Workbench workbench;
    private final Clock clock;

    ShotTaking(BayViewModel bay, Workbench workbench, Clock clock) {
        this.bay = bay;
        this.workbench = workbench;
        this.clock = clock;
    }

    EntryLine.Outcome record(EntryLine line, List<String> cells) {
        EntryLine.Outcome outcome = line.read(cells);
        if (outcome instanceof EntryLine.Outcome.Shot shot) {
            take(List.of(shot(shot.readings())));
            shot.unusual().stream().findFirst().ifPresent(workbench::say);
        }
        return outcome;
    }

    void paste(EntryLine line, String rows) {
        List<Shot> shots = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        String[] lines = rows.split("\\R");
        for (int n = 0; n < lines.length; n++) {
            EntryLine.Outcome outcome = line.read(line.cells(lines[n], workbench.settings().get().decimalMark()));
            if (outcome instanceof EntryLine.Outcome.Shot shot) {
                shots.add(shot(shot.readings()).withSource(PASTE));
            } else if (outcome instanceof EntryLine.Outcome.Refused no) {
                refused.add("row " + (n + 1) + ": " + no.sentence());
            }
        }
        take(shots);
        if (refused.isEmpty()) {
            workbench.say(shots.size() + (shots.size() == 1 ? " row" : " rows") + " pasted.");
        } else {
            workbench.sayProblem(shots.size() + " pasted, " + refused.size() + " left out; " + refused.get(0));
        }
    }

    void arrived(Arrival arrival) {
        List<Shot> shots = Stream.concat(arrival.added().stream(), arrival.replaced().stream())
                .map(IntakeRow::shot).toList();
        if (arrival.withdrawn().isEmpty()) {
            take(shots);
        } else {
            workbench.applyOrSay(bay.play().takeInAndWithdraw(shots, Set.copyOf(arrival.withdrawn())));
        }
        arrival.problems().stream().findFirst().ifPresent(problem -> workbench.sayProblem(problem.text()));
    }

    private Shot shot(Readings readings) {
        return Shot.of(bay.newIdentity(), readings).withAt(clock.instant());
    }

    private void take(List<Shot> shots) {
        if (!shots.isEmpty()) {
            workbench.applyOrSay(bay.play().takeIn(shots));
        }
    }
}

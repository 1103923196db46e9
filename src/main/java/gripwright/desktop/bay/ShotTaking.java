package gripwright.desktop.bay;

import gripwright.desktop.support.Workbench;
import gripwright.intake.Arrival;
import gripwright.intake.CsvIntake;
import gripwright.intake.IntakeRow;
import gripwright.model.Configuration;
import gripwright.model.Readings;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Takes shots in, whether typed, pasted or brought by a source; each keeps where it came from. */
final class ShotTaking {

    private static final Pattern STARTS_AS_NUMBER = Pattern.compile("^[-+.,\u2212]?\\d");
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

    /** Rows under headings are looked at on the sheet, as a file is; rows without are those of the entry line. */
    void paste(EntryLine line, String rows) {
        List<String> headings = CsvIntake.headings(rows);
        if (!headings.isEmpty() && headings.stream().noneMatch(heading -> STARTS_AS_NUMBER.matcher(heading).find())) {
            workbench.rowsToTake().set(rows);
            return;
        }
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
        sayWhereItDiffers(arrival);
        arrival.problems().stream().findFirst().ifPresent(problem -> workbench.sayProblem(problem.text()));
    }

    /** Live, the club in the fitter's hand decides; a file that names another configuration is contradicted aloud. */
    private void sayWhereItDiffers(Arrival arrival) {
        Optional<String> inHand = workbench.test().get().stintInHand()
                .flatMap(stint -> workbench.test().get().configuration(stint.configurationId())).map(Configuration::label);
        arrival.added().stream().map(IntakeRow::configuration).filter(said -> !said.isEmpty()
                && !said.equalsIgnoreCase(inHand.orElse(""))).reduce((earlier, later) -> later).ifPresent(said ->
                workbench.say("The file says \u2018" + said + "\u2019; here the stint in hand decides, and the shot went to "
                        + inHand.map(label -> label + ". C corrects the stint.").orElse("the tray.")));
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

package gripwright.desktop.bay;

import gripwright.charts.Mark;
import gripwright.desktop.bay.Prompt.Option;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Note;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.session.edits.QueueEdits;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The questions that the bay asks in its own line, and what their answers do. */
final class BayPrompts {

    private static final List<String> REASONS = List.of("mishit", "half swing", "disturbed", "slipped",
            "reading is wrong");
    private static final int MOST_OPTIONS = 6;

    private final BayViewModel bay;

    BayPrompts(BayViewModel bay) {
        this.bay = bay;
    }

    Prompt whySetAside(Shot shot) {
        List<Option> reasons = REASONS.stream().map(reason -> Option.of(reason, () -> setAside(shot, reason))).toList();
        return Prompt.orWords("Set aside, why?", reasons, "or in words", typed -> setAside(shot, typed));
    }

    private void setAside(Shot shot, String reason) {
        bay.apply(bay.play().setAside(shot.id(), reason), "Set aside: " + reason + ". B brings it back.");
    }

    Prompt note(Stint stint) {
        List<Option> kinds = new ArrayList<>();
        kinds.add(noteOption(stint, "another ball", Note.Kind.BALL_CHANGED));
        kinds.add(noteOption(stint, "another glove", Note.Kind.GLOVE_CHANGED));
        kinds.add(noteOption(stint, "another mat", Note.Kind.MAT_CHANGED));
        kinds.add(noteOption(stint, "pain", Note.Kind.PAIN));
        return Prompt.orWords("What is to be noted?", kinds, "in words", words -> bay.apply(
                bay.queue().note(stint.id(), bay.noteNow(stint, Note.Kind.NOTE, words)), "Noted."));
    }

    private Option noteOption(Stint stint, String text, Note.Kind kind) {
        String said = kind == Note.Kind.PAIN
                ? "Pain noted. Rest, or stop here; if it stays, the player should see a clinician."
                : "Noted; the comparison is told.";
        return Option.of(text, () -> bay.apply(bay.queue().note(stint.id(), bay.noteNow(stint, kind, "")), said));
    }

    Prompt whichWasIt(Stint stint) {
        List<Option> options = configurations().stream()
                .filter(c -> !c.id().equals(stint.configurationId()))
                .map(c -> new Option(c.label(), Mark.of(c), () -> bay.ask(fromWhere(stint, c)))).toList();
        return Prompt.choice("Not " + label(stint) + "? Which was it?", options);
    }

    private Prompt fromWhere(Stint stint, Configuration right) {
        List<Option> options = new ArrayList<>();
        options.add(Option.of("the whole stint", () -> bay.apply(bay.queue().correct(stint.id(), right.id()),
                "The stint counts for " + right.label() + " now.")));
        for (int index = stint.shots().size() - 1; index >= 1 && options.size() < MOST_OPTIONS; index--) {
            int from = index;
            options.add(Option.of("from " + (index + 1) + " on", () -> correctFrom(stint, from, right)));
        }
        return Prompt.orNumber(right.label() + " from where on?", options, "or from shot number",
                typed -> correctFromTyped(stint, typed, right));
    }

    private void correctFrom(Stint stint, int index, Configuration right) {
        bay.apply(bay.queue().correctFrom(stint.id(), stint.shots().get(index).id(), right.id(), bay.newIdentity()),
                "From shot " + (index + 1) + " on it counts for " + right.label() + ".");
    }

    private void correctFromTyped(Stint stint, String typed, Configuration right) {
        boolean number = typed.matches("\\d{1,4}");
        int shot = number ? Integer.parseInt(typed) : 0;
        if (shot < 1 || shot > stint.shots().size()) {
            bay.ask(fromWhere(stint, right));
        } else {
            correctFrom(stint, shot - 1, right);
        }
    }

    Prompt whichNext() {
        List<Option> options = new ArrayList<>();
        configurations().forEach(c -> options.add(new Option(c.label(), Mark.of(c), () -> takeInHand(c))));
        BaySheets.lastDone(test()).ifPresent(done -> options.add(
                Option.of("last was not " + label(done), () -> bay.correct(done.id()))));
        return Prompt.choice("Which is next?", options);
    }

    private void takeInHand(Configuration configuration) {
        Optional<Stint> planned = test().stints().stream().filter(s -> s.state() == Stint.State.PLANNED
                && s.configurationId().equals(configuration.id())).findFirst();
        if (planned.isPresent()) {
            bay.start(planned.get().id());
            return;
        }
        Stint stint = Stint.planned(bay.newIdentity(), configuration.id(), Stint.Kind.SCORED,
                test().plan().shotsPerStint(), test().plan().settlingSwings());
        bay.apply(bay.queue().addNext(stint), "");
        bay.start(stint.id());
    }

    Prompt planned(Stint stint) {
        String label = label(stint);
        return Prompt.choice("The planned stint of " + label, List.of(
                Option.of("start it now", () -> bay.start(stint.id())),
                Option.of("hit it next", () -> bay.apply(bay.queue().bringForward(stint.id()), label + " is next."))));
    }

    Prompt repeat(Stint stint) {
        String label = label(stint);
        return Prompt.choice("Hit " + label + " again, when?", List.of(
                Option.of("next, the grip stays on", () -> repeat(stint, QueueEdits.Repeat.NEXT_UNCHANGED,
                        label + " goes on; without a change the two count as one stint.")),
                Option.of("next, grip off and on again", () -> repeat(stint, QueueEdits.Repeat.NEXT_CHANGED,
                        label + " comes next, as a retest.")),
                Option.of("at the end", () -> repeat(stint, QueueEdits.Repeat.AT_THE_END,
                        label + " comes again at the end, as a retest."))));
    }

    private void repeat(Stint stint, QueueEdits.Repeat where, String said) {
        bay.apply(bay.queue().repeat(stint.id(), bay.newIdentity(), where), said);
    }

    Prompt tray(List<Shot> tray) {
        Set<String> all = tray.stream().map(Shot::id).collect(Collectors.toCollection(LinkedHashSet::new));
        List<Option> options = new ArrayList<>();
        BaySheets.lastDone(test()).ifPresent(done -> options.add(place(all, done, "done")));
        test().stintInHand().ifPresent(hand -> options.add(place(all, hand, "in hand")));
        if (all.size() > 1) {
            Set<String> first = Set.of(tray.get(0).id());
            BaySheets.lastDone(test()).ifPresent(done -> options.add(place(first, done, "done")));
            test().stintInHand().ifPresent(hand -> options.add(place(first, hand, "in hand")));
        }
        String waiting = tray.size() == 1 ? "One shot waits" : tray.size() + " shots wait";
        return Prompt.choice(waiting + (options.isEmpty() ? "; start a stint to give them a place."
                : " in the tray. Where do they belong?"), options);
    }

    private Option place(Set<String> shots, Stint stint, String state) {
        String which = shots.size() == 1 ? "the first" : "all";
        String label = label(stint);
        return Option.of(which + " to " + label + ", " + state, () -> bay.apply(
                bay.play().placeFromTray(shots, stint.id()),
                "They belong to " + label + " now."));
    }

    private List<Configuration> configurations() {
        return test().configurations();
    }

    private ClubTest test() {
        return bay.test();
    }

    private String label(Stint stint) {
        return test().configuration(stint.configurationId()).map(Configuration::label).orElse("?");
    }
}

package gripwright.desktop.bay;

import gripwright.desktop.support.Workbench;
import gripwright.intake.Answers;
import gripwright.intake.Arrival;
import gripwright.intake.ColumnMapping;
import gripwright.intake.CsvIntake;
import gripwright.intake.LiveListener;
import gripwright.intake.LiveSource;
import gripwright.intake.Question;
import gripwright.intake.SourceStatus;
import gripwright.intake.WatchOptions;
import gripwright.intake.WatchedReadings;
import gripwright.model.Session;
import gripwright.model.Shot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Opens and closes the source that shots arrive from, and hands what it brings to the bay on the window's thread.
 *
 * <p>There is one source at a time; opening another closes the one before.
 */
public final class ShotSources {

    private final Workbench workbench;
    private final BayViewModel bay;
    private final Rehearsals rehearsals;
    private LiveSource live;
    /** How often a source was chosen or stopped; what was found out for an earlier choice is dropped. */
    private int choices;
    private Consumer<Answers> answering = answers -> { };

    /**
     * @param workbench the session, and the way to the window's thread
     * @param bay who the shots are for
     */
    public ShotSources(Workbench workbench, BayViewModel bay) {
        this.workbench = workbench;
        this.bay = bay;
        rehearsals = new Rehearsals(workbench);
        workbench.session().map(Session::id).addListener((observed, before, now) -> anotherSession());
    }

    /** What a source brings belongs to the session it was opened for. */
    private void anotherSession() {
        if (live != null) {
            stop();
            workbench.say("Another session is open; the source of shots was let go. W chooses it again.");
        }
    }

    /** Asks which source it shall be; a path can be typed. */
    public void ask(Runnable chooseFile, Runnable chooseFolder) {
        List<Prompt.Option> options = new ArrayList<>();
        options.add(Prompt.Option.of("a file\u2026", chooseFile));
        options.add(Prompt.Option.of("a folder\u2026", chooseFolder));
        options.add(Prompt.Option.of("rehearse", this::askRehearsal));
        if (live != null) {
            options.add(Prompt.Option.of("none, shots are typed", this::stop));
        }
        bay.ask(Prompt.orWords("Where do shots come from?", options, "or the path of a file or folder", this::typed));
    }

    private void typed(String path) {
        try {
            chosen(Path.of(path));
        } catch (InvalidPathException nonsense) {
            workbench.sayProblem("'" + path + "' is no path; write it as your system does, or choose a file.");
        }
    }

    /** A file or folder was chosen; where shots are in it already, asks whether they are of this session. */
    public void chosen(Path path) {
        workbench.inBackground(() -> isHoldingSomething(path), holding -> {
            if (!holding) {
                watch(path, false);
                return;
            }
            bay.ask(Prompt.choice("There are readings in it already. Which belong to this session?", List.of(
                    Prompt.Option.of("only new ones", () -> watch(path, true)),
                    Prompt.Option.of("all of them", () -> watch(path, false)))));
        }, failure -> workbench.sayProblem(String.valueOf(failure.getMessage())));
    }

    private static boolean isHoldingSomething(Path path) {
        if (Files.isDirectory(path)) {
            String[] names = path.toFile().list();
            return names != null && names.length > 0;
        }
        return path.toFile().length() > 0;
    }

    /** What the disk says of a path before it is watched. */
    private record Looked(boolean isFolder, ColumnMapping mapping) {
    }

    /** Watches a file or folder from now on, a file with the shop's mapping where one belongs to it. */
    public void watch(Path path, boolean onlyNew) {
        stop();
        int mine = choices;
        Session session = workbench.session().get();
        workbench.inBackground(() -> new Looked(Files.isDirectory(path), mappingFor(path)), looked -> {
            if (mine == choices && workbench.session().get().id().equals(session.id())) {
                begin(path, looked, onlyNew);
            }
        }, failure -> workbench.sayProblem(String.valueOf(failure.getMessage())));
    }

    private void begin(Path path, Looked looked, boolean onlyNew) {
        Session session = workbench.session().get();
        CsvIntake intake = CsvIntake.withDefaults().with(session.player().hand()).with(ZoneId.systemDefault())
                .with(session.date()).with(looked.mapping());
        WatchOptions options = WatchOptions.usual().withSkipExisting(onlyNew);
        WatchedReadings watched = looked.isFolder()
                ? WatchedReadings.ofFolder(path, intake, allShots(session), options)
                : WatchedReadings.ofFile(path, intake, allShots(session), options);
        answering = watched::answer;
        begin(watched, false);
        workbench.say("Watching " + path.getFileName() + (looked.mapping().isNamed()
                ? ", read with the shop\u2019s mapping \u2018" + looked.mapping().name() + "\u2019." : "."));
    }

    /** The one mapping of the shop's that belongs to the file, by its name or else by its headings; none of several. */
    private ColumnMapping mappingFor(Path path) {
        try {
            List<ColumnMapping> saved = workbench.services().mappings();
            List<String> headings = Files.isRegularFile(path) ? CsvIntake.headings(path) : List.of();
            for (ColumnMapping.Fit fit : List.of(ColumnMapping.Fit.FILE_NAME, ColumnMapping.Fit.HEADINGS)) {
                List<ColumnMapping> fitting = saved.stream()
                        .filter(each -> each.fit(String.valueOf(path.getFileName()), headings) == fit).toList();
                if (!fitting.isEmpty()) {
                    return fitting.size() == 1 ? fitting.get(0) : ColumnMapping.none();
                }
            }
        } catch (IOException unreadable) {
            workbench.onWindow(() -> workbench.sayProblem(unreadable.getMessage()));
        }
        return ColumnMapping.none();
    }

    private void askRehearsal() {
        bay.ask(Prompt.choice("Rehearse with", rehearsals.options(this::rehearse)));
    }

    /** Plays a rehearsal into the bay; its shots are marked and never compared with real ones. */
    public void rehearse(LiveSource rehearsal) {
        stop();
        begin(rehearsal, true);
        workbench.say("A rehearsal is playing; its shots are marked as such.");
    }

    private void begin(LiveSource source, boolean rehearsing) {
        live = source;
        bay.sourceChanged(source.status(), rehearsing);
        source.start(new LiveListener() {
            @Override
            public void arrived(Arrival arrival) {
                workbench.onWindow(() -> take(source, arrival));
            }

            @Override
            public void changed(SourceStatus status) {
                workbench.onWindow(() -> {
                    if (live == source) {
                        bay.sourceChanged(status, rehearsing);
                    }
                });
            }
        });
    }

    private void take(LiveSource source, Arrival arrival) {
        bay.arrived(arrival);
        if (live == source && !arrival.questions().isEmpty()) {
            askAbout(arrival.questions().get(0));
        }
    }

    /** Asks what a source leaves open; the answer reads it again. */
    private void askAbout(Question question) {
        bay.ask(Prompt.choice(question.sentence(), question.choices().stream().map(choice -> Prompt.Option.of(
                choice.text(), () -> answering.accept(Answers.none().with(question.id(), choice.key())))).toList()));
    }

    /** Closes the source; shots are typed from now on. */
    public void stop() {
        choices++;
        if (live != null) {
            live.close();
            live = null;
            answering = answers -> { };
        }
        bay.sourceChanged(null, false);
    }

    private static List<Shot> allShots(Session session) {
        List<Shot> shots = new ArrayList<>(session.tray());
        session.tests().forEach(test -> test.stints().forEach(stint -> shots.addAll(stint.shots())));
        return shots;
    }
}

package gripwright.app;

import gripwright.desktop.WorkbenchWindow;
import gripwright.desktop.bay.BayPlace;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Metric;
import gripwright.model.Session;
import gripwright.model.Shot;
import gripwright.model.Stint;
import gripwright.session.edits.QueueEdits;
import gripwright.storage.SessionFile;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * Measures, in the real window with the real journal, how long a line appended to a watched file takes to be on the
 * screen with every number updated, and how long the window's thread is busy while shots arrive.
 *
 * <p>Run by {@code mvn -P bay-latency test-compile exec:exec} under a display; writes its report to target/bay-latency.md.
 * Arguments: shots there already, shots appended, width, height.
 */
public final class BayLatency {

    private static final int SHOTS_A_STINT = 25;
    private static final int PATIENCE_SECONDS = 20;
    /** The first shots after a start find code that was not compiled yet; they are told apart. */
    private static final int WARMING = 25;

    private final int there;
    private final int appended;
    private final double width;
    private final double height;
    private final Random random = new Random(500);
    private final ExecutorService background = Executors.newFixedThreadPool(2, BayLatency::daemon);
    private final List<Double> untilShown = new ArrayList<>();
    private final List<Double> untilNumbers = new ArrayList<>();
    private Workbench workbench;
    private WorkbenchWindow window;
    private Waiting waiting;
    private String firstShots = "";
    private String firstBusy = "";

    /** What is waited for: the shot on the screen, then the numbers of the comparison that holds it. */
    private static final class Waiting {
        private final int shots;
        private final CountDownLatch done = new CountDownLatch(2);
        private boolean shotChanged;
        private boolean numbersChanged;
        private long shownAt;
        private long numbersAt;

        private Waiting(int shots) {
            this.shots = shots;
        }
    }

    private BayLatency(int there, int appended, double width, double height) {
        this.there = there;
        this.appended = appended;
        this.width = width;
        this.height = height;
    }

    public static void main(String[] arguments) throws Exception {
        int[] given = Stream.of(arguments).mapToInt(Integer::parseInt).toArray();
        new BayLatency(given.length > 0 ? given[0] : 500, given.length > 1 ? given[1] : 500,
                given.length > 2 ? given[2] : 1366, given.length > 3 ? given[3] : 768).run();
        System.exit(0);
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "gripwright-work");
        thread.setDaemon(true);
        return thread;
    }

    private void run() throws Exception {
        Path home = Files.createTempDirectory("bay-latency");
        Path file = home.resolve("session.json");
        new SessionFile().write(file, session());
        DesktopServices services = new DesktopServices(new ApplicationFolders(home), false);
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        onWindow(() -> {
            open(services, file);
            return null;
        });
        Path readings = home.resolve("readings.csv");
        append(readings, "Club speed [m/s];Face angle [deg];Club path [deg];Closure rate [deg/s];Carry [m];Offline [m]");
        onWindow(() -> {
            ((BayPlace) window.shown()).sources().watch(readings, false);
            return null;
        });
        waitForComparison();
        BusyProbe probe = new BusyProbe(onWindow(() -> Thread.currentThread().getId()));
        probe.start();
        for (int n = 0; n < WARMING + appended; n++) {
            if (n == WARMING) {
                firstShots = figures(untilNumbers);
                firstBusy = figures(probe.restart());
                untilShown.clear();
                untilNumbers.clear();
            }
            shoot(readings, n);
        }
        probe.finish();
        report(probe);
        services.close();
    }

    private void open(DesktopServices services, Path file) throws Exception {
        Theme.loadFonts();
        workbench = new Workbench(services, background, Platform::runLater);
        window = new WorkbenchWindow(workbench);
        Stage stage = new Stage();
        window.open(stage);
        stage.setWidth(width);
        stage.setHeight(height);
        workbench.open(services.open(file));
        workbench.place().set(PlaceKey.BAY);
        workbench.revision().addListener((observed, before, now) -> noteShot());
        workbench.comparison().value().addListener((observed, before, now) -> noteNumbers());
        window.scene().addPostLayoutPulseListener(this::pulsed);
    }

    /** The session that is there already has been compared, as it would be when it was opened. */
    private void waitForComparison() throws Exception {
        while (onWindow(() -> workbench.comparison().computing().get())) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
    }

    private static int count(Session session) {
        return session.tray().size() + session.tests().stream().flatMap(test -> test.stints().stream())
                .mapToInt(stint -> stint.shots().size()).sum();
    }

    private synchronized void noteShot() {
        if (waiting != null && count(workbench.session().get()) >= waiting.shots) {
            waiting.shotChanged = true;
        }
    }

    private synchronized void noteNumbers() {
        if (waiting != null && workbench.comparison().value().get() != null && workbench.comparison().value().get()
                .configurations().stream().mapToInt(c -> c.swings()).sum() >= waiting.shots) {
            waiting.numbersChanged = true;
        }
    }

    /** The nodes have been changed and laid out; what is drawn now shows them. */
    private synchronized void pulsed() {
        long now = System.nanoTime();
        if (waiting == null) {
            return;
        }
        if (waiting.shotChanged && waiting.shownAt == 0) {
            waiting.shownAt = now;
            waiting.done.countDown();
        }
        if (waiting.numbersChanged && waiting.numbersAt == 0) {
            waiting.numbersAt = now;
            waiting.done.countDown();
        }
    }

    private void shoot(Path readings, int n) throws Exception {
        if (n % SHOTS_A_STINT == 0) {
            onWindow(() -> {
                ClubTest test = workbench.test().get();
                String next = test.stints().stream().filter(s -> s.state() == Stint.State.PLANNED).findFirst()
                        .orElseThrow().id();
                workbench.applyOrSay(QueueEdits.of(test.id()).start(next, Instant.now()));
                return null;
            });
        }
        TimeUnit.MILLISECONDS.sleep(60 + random.nextInt(80));
        Waiting next = new Waiting(there + n + 1);
        synchronized (this) {
            waiting = next;
        }
        append(readings, line());
        long at = System.nanoTime();
        if (!next.done.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new IllegalStateException("Shot " + (n + 1) + " did not come to the screen.");
        }
        untilShown.add((next.shownAt - at) / 1e6);
        untilNumbers.add((Math.max(next.numbersAt, next.shownAt) - at) / 1e6);
    }

    private String line() {
        return String.format(Locale.ROOT, "%.2f;%.2f;%.2f;%.0f;%.1f;%.1f", 36 + 0.5 * random.nextGaussian(),
                1 + 2 * random.nextGaussian(), -1 + 1.8 * random.nextGaussian(), 2300 + 150 * random.nextGaussian(),
                138 + 4 * random.nextGaussian(), 2 + 6 * random.nextGaussian());
    }

    private static void append(Path file, String line) throws Exception {
        Files.write(file, (line + "\n").getBytes(StandardCharsets.UTF_8), StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
    }

    private static <T> T onWindow(java.util.concurrent.Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    /** An invented session: five configurations, mirrored stints of 25, the first ones hit, the others planned. */
    private Session session() {
        Session demo = gripwright.desktop.support.DemoSessions.leftHanded();
        ClubTest test = demo.tests().get(0);
        List<Stint> stints = new ArrayList<>();
        int all = (there + WARMING + appended) / SHOTS_A_STINT + 1;
        for (int n = 0; n < all; n++) {
            int place = n % (2 * test.configurations().size());
            int which = place < test.configurations().size() ? place : 2 * test.configurations().size() - 1 - place;
            Stint stint = Stint.planned("latency-" + n, test.configurations().get(which).id(), Stint.Kind.SCORED,
                    SHOTS_A_STINT, 0);
            stints.add(n < there / SHOTS_A_STINT ? stint.withShots(shots(n)).withState(Stint.State.DONE) : stint);
        }
        return demo.withTests(List.of(test.withStints(stints))).withTray(List.of());
    }

    private List<Shot> shots(int stint) {
        List<Shot> shots = new ArrayList<>();
        for (int n = 0; n < SHOTS_A_STINT; n++) {
            double[] cells = Arrays.stream(line().split(";")).mapToDouble(Double::parseDouble).toArray();
            shots.add(Shot.of("there-" + stint + "-" + n, gripwright.model.Readings.of(Metric.CLUB_SPEED, cells[0])
                    .with(Metric.FACE_ANGLE, cells[1]).with(Metric.CLUB_PATH, cells[2])
                    .with(Metric.CLOSURE_RATE, cells[3]).with(Metric.CARRY, cells[4])
                    .with(Metric.OFFLINE, cells[5])));
        }
        return shots;
    }

    /**
     * Asks the window's thread for a word every other millisecond. How long the answer takes is how long it was busy, and
     * how much it computed meanwhile tells its own work from a processor that others held.
     */
    private static final class BusyProbe extends Thread {

        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        private final long windowThread;
        private final List<Double> waits = new ArrayList<>();
        private final List<Double> work = new ArrayList<>();
        private volatile boolean finished;

        private BusyProbe(long windowThread) {
            super("busy probe");
            this.windowThread = windowThread;
            setDaemon(true);
        }

        @Override
        public void run() {
            try {
                while (!finished) {
                    long asked = System.nanoTime();
                    long worked = threads.getThreadCpuTime(windowThread);
                    long[] answered = new long[1];
                    CountDownLatch answer = new CountDownLatch(1);
                    Platform.runLater(() -> {
                        answered[0] = System.nanoTime();
                        answer.countDown();
                    });
                    answer.await();
                    note((answered[0] - asked) / 1e6, (threads.getThreadCpuTime(windowThread) - worked) / 1e6);
                    TimeUnit.MILLISECONDS.sleep(2);
                }
            } catch (InterruptedException stopped) {
                currentThread().interrupt();
            }
        }

        /** Gives back what was found so far, and begins anew. */
        private synchronized List<Double> restart() {
            List<Double> before = List.copyOf(waits);
            waits.clear();
            work.clear();
            return before;
        }

        private synchronized void note(double waited, double worked) {
            waits.add(waited);
            work.add(worked);
        }

        private void finish() throws InterruptedException {
            finished = true;
            join();
        }
    }

    private void report(BusyProbe probe) throws Exception {
        String text = String.format(Locale.ROOT, """
                | measure | median | 99th percentile | longest |
                | --- | --- | --- | --- |
                | append to the shot on the screen, ms | %s |
                | append to every number updated, ms | %s |
                | busy spells of the window's thread, ms | %s |
                | of that, its own computing, ms | %s |
                | first 25 shots after the start: append to every number updated, ms | %s |
                | first 25 shots after the start: busy spells, ms | %s |

                %d shots appended one after the other to a session that held %d; window %.0f x %.0f; %d questions to the
                window's thread; Java %s, %d processors, load average %.1f at the end.
                """, figures(untilShown), figures(untilNumbers), figures(probe.waits), figures(probe.work), firstShots, firstBusy, appended, there, width, height,
                probe.waits.size(), System.getProperty("java.version"), Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        System.out.print(text);
        Files.writeString(Path.of("target", "bay-latency.md"), text);
    }

    private static String figures(List<Double> values) {
        List<Double> sorted = values.stream().sorted(Comparator.naturalOrder()).toList();
        return String.format(Locale.ROOT, "%.1f | %.1f | %.1f", sorted.get(sorted.size() / 2),
                sorted.get(Math.min(sorted.size() - 1, (int) Math.ceil(0.99 * sorted.size()) - 1)),
                sorted.get(sorted.size() - 1));
    }
}

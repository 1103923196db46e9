package gripwright.desktop.review;

import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.Standing;
import gripwright.desktop.support.Derived;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.report.AdviceWords;
import gripwright.report.PlayerStory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * What Review shows: two configurations, the story of the one against the other, and one metric as a picture.
 *
 * <p>It opens on the advised configuration against the reference; where the reference itself is advised, on the one that
 * stands best among the others. The fitter changes either side and the picture with the arrow keys.
 */
public final class ReviewViewModel {

    private static final int PICTURES = 6;

    private final Workbench workbench;
    private final Derived<Comparison> comparison;
    private final ObjectProperty<String> left = new SimpleObjectProperty<>();
    private final ObjectProperty<String> right = new SimpleObjectProperty<>();
    private final ReadOnlyObjectWrapper<PlayerStory> story = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<MetricComparison> picture = new ReadOnlyObjectWrapper<>();
    private int pictureIndex;
    private String testShown = "";

    public ReviewViewModel(Workbench workbench) {
        this.workbench = workbench;
        this.comparison = workbench.comparison();
        comparison.value().subscribe(now -> arrived());
        left.subscribe(now -> tell());
        right.subscribe(now -> tell());
    }

    public ReadOnlyObjectProperty<Comparison> comparison() {
        return comparison.value();
    }

    /** Why there is no comparison; empty when there is one, or none yet. */
    public String problem() {
        return comparison.problem().get();
    }

    /** Identity of the configuration that is held against; the reference to begin with. */
    public ObjectProperty<String> left() {
        return left;
    }

    /** Identity of the configuration that the story is about. */
    public ObjectProperty<String> right() {
        return right;
    }

    /** The story of the right one against the left one; null while there is nothing to tell. */
    public ReadOnlyObjectProperty<PlayerStory> story() {
        return story.getReadOnlyProperty();
    }

    /** The metric shown as a picture; null while there is none. */
    public ReadOnlyObjectProperty<MetricComparison> picture() {
        return picture.getReadOnlyProperty();
    }

    /** The configuration with this identity in the test in view; null where it is gone. */
    public Configuration configuration(String id) {
        return id == null ? null : workbench.test().get().configuration(id).orElse(null);
    }

    /** Shows the next configuration on the right, passing over the one on the left. */
    public void turnRight(int steps) {
        right.set(turned(right.get(), left.get(), steps));
    }

    /** Shows the next configuration on the left, passing over the one on the right. */
    public void turnLeft(int steps) {
        left.set(turned(left.get(), right.get(), steps));
    }

    private String turned(String from, String other, int steps) {
        List<String> ids = ids();
        if (ids.size() < 2) {
            return from;
        }
        int at = Math.floorMod(ids.indexOf(from) + steps, ids.size());
        return ids.get(at).equals(other) ? ids.get(Math.floorMod(at + Integer.signum(steps), ids.size())) : ids.get(at);
    }

    /** Shows another metric as the picture. */
    public void turnPicture(int steps) {
        pictureIndex += steps;
        choosePicture();
    }

    private List<String> ids() {
        return workbench.test().get().configurations().stream().map(Configuration::id).toList();
    }

    private void arrived() {
        Comparison now = comparison.value().get();
        if (now == null || now.metrics().isEmpty()) {
            story.set(null);
            picture.set(null);
            return;
        }
        ClubTest test = workbench.test().get();
        List<String> ids = ids();
        boolean another = !testShown.equals(test.id());
        testShown = test.id();
        if (another || !ids.contains(left.get())) {
            left.set(now.referenceId());
        }
        if (another || !ids.contains(right.get()) || right.get().equals(left.get())) {
            right.set(firstLook(now, AdviceWords.of(workbench.session().get(), test, now).configurationId(), ids));
        }
        tell();
        choosePicture();
    }

    /** The advice as the player reads it; only while there is a comparison. */
    public AdviceWords advice() {
        return AdviceWords.of(workbench.session().get(), workbench.test().get(), comparison.value().get());
    }

    private static String firstLook(Comparison now, String advised, List<String> ids) {
        if (advised != null && !advised.equals(now.referenceId())) {
            return advised;
        }
        return now.overall().stream()
                .filter(s -> s.probabilityBest() != null && !s.configurationId().equals(now.referenceId()))
                .max(Comparator.comparing(Standing::probabilityBest)).map(Standing::configurationId)
                .orElseGet(() -> ids.stream().filter(id -> !id.equals(now.referenceId())).findFirst().orElse(null));
    }

    private void tell() {
        Comparison now = comparison.value().get();
        boolean two = now != null && left.get() != null && right.get() != null && !left.get().equals(right.get());
        story.set(two ? PlayerStory.of(now, right.get(), left.get(), workbench.settings().get()) : null);
    }

    private void choosePicture() {
        Comparison now = comparison.value().get();
        List<MetricComparison> pictures = now == null ? List.of() : pictures(now);
        picture.set(pictures.isEmpty() ? null : pictures.get(Math.floorMod(pictureIndex, pictures.size())));
    }

    /** The goal's metrics, then the scored ones, then what else was read: few enough to leaf through. */
    private static List<MetricComparison> pictures(Comparison now) {
        List<MetricComparison> pictures = new ArrayList<>(now.primaryMetrics());
        now.metrics().stream().filter(m -> !m.primary() && m.isScored()).forEach(pictures::add);
        now.metrics().stream().filter(m -> !m.primary() && !m.isScored()).forEach(pictures::add);
        return pictures.stream().limit(Math.max(PICTURES, now.primaryMetrics().size())).toList();
    }
}

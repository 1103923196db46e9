package gripwright.desktop.compare;

import gripwright.comparison.Comparer;
import gripwright.comparison.Comparison;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.MishitFlag;
import gripwright.comparison.Sensitivity;
import gripwright.desktop.support.Derived;
import gripwright.desktop.support.Snapshot;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Session;
import gripwright.model.Stint;
import gripwright.session.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What Compare shows: the topics there are, the one chosen, and the comparison it is read from. */
public final class CompareViewModel {

    private final Workbench workbench;
    private final Derived<Comparison> comparison;
    private final ObservableList<Topic> topics = FXCollections.observableArrayList();
    private final ObjectProperty<Topic> chosen = new SimpleObjectProperty<>();
    private final ReadOnlyObjectWrapper<Sensitivity> sensitivity = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper sensitivityState = new ReadOnlyStringWrapper("");

    public CompareViewModel(Workbench workbench) {
        this.workbench = workbench;
        this.comparison = workbench.comparison();
        comparison.value().subscribe(this::arrived);
    }

    Workbench workbench() {
        return workbench;
    }

    /** The comparison; null while there is none. */
    public ReadOnlyObjectProperty<Comparison> comparison() {
        return comparison.value();
    }

    /** Whether a newer comparison is on its way. */
    Derived<Comparison> derived() {
        return comparison;
    }

    /** The topics in order: overall, the goal's metrics, the others, the other results. */
    public ObservableList<Topic> topics() {
        return topics;
    }

    /** The topic shown; null while there is nothing to show. */
    public ObjectProperty<Topic> chosen() {
        return chosen;
    }

    /** Whether any shot is scored yet. */
    public boolean hasShots() {
        Comparison now = comparison.value().get();
        return now != null && !now.metrics().isEmpty();
    }

    private void arrived(Comparison now) {
        sensitivity.set(null);
        sensitivityState.set("");
        List<Topic> next = now == null || now.metrics().isEmpty() ? List.of() : topicsOf(now);
        if (!next.equals(topics)) {
            Topic before = chosen.get();
            topics.setAll(next);
            chosen.set(next.stream().filter(topic -> topic.isSameAs(before)).findFirst()
                    .orElse(next.isEmpty() ? null : next.get(0)));
        }
    }

    private static List<Topic> topicsOf(Comparison now) {
        List<Topic> topics = new ArrayList<>();
        topics.add(Topic.of(Topic.Kind.OVERALL));
        now.primaryMetrics().forEach(metric -> topics.add(Topic.of(metric.metric(), true)));
        now.metrics().stream().filter(metric -> !metric.primary())
                .forEach(metric -> topics.add(Topic.of(metric.metric(), false)));
        if (!now.patterns().isEmpty()) {
            topics.add(Topic.of(Topic.Kind.PATTERNS));
        }
        if (!now.spread().isEmpty()) {
            topics.add(Topic.of(Topic.Kind.SPREAD));
        }
        if (!now.sizeResponses().isEmpty()) {
            topics.add(Topic.of(Topic.Kind.SIZE));
        }
        if (now.overall().stream().anyMatch(standing -> standing.feel() != null)) {
            topics.add(Topic.of(Topic.Kind.FEEL));
        }
        topics.add(Topic.of(Topic.Kind.MISHITS));
        topics.add(Topic.of(Topic.Kind.OTHERWISE));
        return topics;
    }

    /** The metric of the chosen topic; null where another kind is chosen. */
    MetricComparison metric() {
        Topic topic = chosen.get();
        Comparison now = comparison.value().get();
        return topic == null || topic.metric() == null || now == null ? null
                : now.metric(topic.metric()).orElse(null);
    }

    /** Compares with another configuration from now on. */
    public void setReference(Configuration configuration) {
        String id = configuration == null ? null : configuration.id();
        edit("Compare with " + (configuration == null ? "the gamer" : configuration.label()),
                test -> test.withReferenceId(id));
    }

    /** Writes down what the fitter advises; null goes by what is worked out. */
    public void advise(Configuration configuration) {
        String id = configuration == null ? null : configuration.id();
        workbench.applyOrSay(new Edit(configuration == null ? "Advise what is worked out"
                : "Advise " + configuration.label(), session -> session.withAdvisedConfigurationId(id)));
    }

    /** What the fitter advises in the test in view; null where that goes by what is worked out. */
    public Configuration advised() {
        String id = workbench.session().get().advisedConfigurationId();
        return id == null ? null : workbench.test().get().configuration(id).orElse(null);
    }

    /** Sets a flagged shot aside as a mishit; undo brings it back. */
    public void setAside(MishitFlag flag) {
        changeShot(flag, "Set a mishit aside", "mishit");
    }

    private void changeShot(MishitFlag flag, String label, String reason) {
        edit(label, test -> test.stint(flag.stintId()).map(stint -> test.withStint(withReason(stint, flag, reason)))
                .orElse(test));
    }

    private static Stint withReason(Stint stint, MishitFlag flag, String reason) {
        return stint.withShots(stint.shots().stream()
                .map(shot -> shot.id().equals(flag.shotId()) ? shot.withSetAsideReason(reason) : shot).toList());
    }

    private void edit(String label, UnaryOperator<ClubTest> change) {
        String id = workbench.test().get().id();
        workbench.applyOrSay(new Edit(label, session -> changed(session, id, change)));
    }

    private static Session changed(Session session, String testId, UnaryOperator<ClubTest> change) {
        return session.test(testId).map(test -> session.withTest(change.apply(test))).orElse(session);
    }

    /** What changes when the session is read another way; null until it was worked out for the present session. */
    public ReadOnlyObjectProperty<Sensitivity> sensitivity() {
        return sensitivity.getReadOnlyProperty();
    }

    /** What is going on with it; empty when nothing is. */
    public ReadOnlyStringProperty sensitivityState() {
        return sensitivityState.getReadOnlyProperty();
    }

    /** Works it out in the background; a result for a session that has changed meanwhile is dropped. */
    public void workOutSensitivity() {
        Snapshot snapshot = workbench.snapshot();
        sensitivityState.set("Working it out \u2026");
        workbench.inBackground(
                () -> Comparer.withSettings(snapshot.settings()).sensitivity(snapshot.session(), snapshot.test()),
                result -> {
                    if (snapshot.revision() == workbench.revision().get()) {
                        sensitivity.set(result);
                        sensitivityState.set("");
                    }
                },
                failure -> sensitivityState.set("This could not be worked out: " + failure.getMessage()));
    }
}

package gripwright.desktop.setup;

import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.Workbench;
import gripwright.model.Guardrail;
import gripwright.model.Metric;
import gripwright.model.PrimaryMetric;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;

/** The smallest differences that matter: the shop's own for every metric, and this session's where it has another. */
public final class DifferencesViewModel {

    private final Workbench workbench;
    private final Subject<Session> session;
    private final Subject<ShopSettings> settings;
    private final BooleanProperty all = new SimpleBooleanProperty();

    DifferencesViewModel(Workbench workbench) {
        this.workbench = workbench;
        session = Subject.session(workbench);
        settings = Subject.settings(workbench);
    }

    /** One metric; this session's field is blank where the shop's value holds. */
    record Row(Metric metric, NumberEntry shop, NumberEntry session) {
    }

    /** Whether every metric is shown, or only those of the goal and of the bay's entry line. */
    BooleanProperty all() {
        return all;
    }

    /** The metrics shown, in the order of the catalogue. */
    ObservableValue<List<Metric>> shown() {
        return all.flatMap(every -> workbench.session().map(now -> every ? List.of(Metric.values()) : used(now)));
    }

    private List<Metric> used(Session now) {
        List<Metric> used = Stream.of(now.goal().primaries().stream().map(PrimaryMetric::metric),
                now.goal().guardrails().stream().map(Guardrail::metric),
                workbench.settings().get().entryColumns().stream()).flatMap(metrics -> metrics).toList();
        return Arrays.stream(Metric.values()).filter(used::contains).toList();
    }

    Row row(Metric metric) {
        return new Row(metric,
                settings.needed("the shop's smallest difference of " + metric.text(), Quantity.of(metric),
                        now -> now.smallestDifference(metric),
                        (now, value) -> now.withSmallestDifferences(with(now.smallestDifferences(), metric, value))),
                session.number("smallest difference of " + metric.text(), Quantity.of(metric),
                        now -> now.smallestDifferences().get(metric),
                        (now, value) -> now.withSmallestDifferences(with(now.smallestDifferences(), metric, value))));
    }

    private static Map<Metric, Double> with(Map<Metric, Double> differences, Metric metric, Double value) {
        Map<Metric, Double> changed = new EnumMap<>(Metric.class);
        changed.putAll(differences);
        if (value == null) {
            changed.remove(metric);
        } else {
            changed.put(metric, value);
        }
        return changed;
    }
}

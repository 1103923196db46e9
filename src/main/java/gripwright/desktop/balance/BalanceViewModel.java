package gripwright.desktop.balance;

import gripwright.balance.ConfigurationBalance;
import gripwright.balance.SessionBalance;
import gripwright.balance.TestBalance;
import gripwright.charts.Lever;
import gripwright.charts.LeverPicture;
import gripwright.desktop.support.Derived;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ShopSettings;
import gripwright.units.Swingweight;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What Balance shows: the balance of the test in view, and the two configurations that are looked at. */
public final class BalanceViewModel {

    private final Workbench workbench;
    private final Derived<SessionBalance> derived;
    private final ReadOnlyObjectWrapper<SessionBalance.Tested> tested = new ReadOnlyObjectWrapper<>();
    private final ObjectProperty<Topic> topic = new SimpleObjectProperty<>(Topic.LEVER);
    private final ObjectProperty<Configuration> first = new SimpleObjectProperty<>();
    private final ObjectProperty<Configuration> second = new SimpleObjectProperty<>();
    private final DoubleProperty share = new SimpleDoubleProperty(1);
    private String paired = "";

    public BalanceViewModel(Workbench workbench) {
        this.workbench = workbench;
        derived = workbench.derive(snapshot ->
                SessionBalance.of(snapshot.session(), snapshot.settings(), snapshot.stock()));
        derived.value().subscribe(this::arrived);
        workbench.test().subscribe(test -> arrived(derived.value().get()));
    }

    Workbench workbench() {
        return workbench;
    }

    Derived<SessionBalance> derived() {
        return derived;
    }

    /** The whole session's balance; null while there is none. */
    public ReadOnlyObjectProperty<SessionBalance> session() {
        return derived.value();
    }

    /** The balance of the test in view; null while there is none. */
    public ReadOnlyObjectProperty<SessionBalance.Tested> tested() {
        return tested.getReadOnlyProperty();
    }

    /** The sheet that is shown. */
    public ObjectProperty<Topic> topic() {
        return topic;
    }

    /** The configuration the lever is left from; null without any. */
    public ObjectProperty<Configuration> first() {
        return first;
    }

    /** The configuration it goes to; null without any. */
    public ObjectProperty<Configuration> second() {
        return second;
    }

    /** How far it is on the way, 0 to 1. */
    public DoubleProperty share() {
        return share;
    }

    /** Exchanges the two. */
    public void exchange() {
        Configuration before = first.get();
        first.set(second.get());
        second.set(before);
    }

    private void arrived(SessionBalance session) {
        ClubTest test = workbench.test().get();
        List<Configuration> there = test.configurations();
        first.set(kept(first.get(), there).or(test::reference).orElse(null));
        second.set(kept(second.get(), there)
                .or(() -> there.stream().filter(c -> !c.equals(first.get())).findFirst())
                .orElse(first.get()));
        tested.set(session == null ? null : session.tests().stream()
                .filter(one -> one.balance().testId().equals(test.id())).findFirst().orElse(null));
        if (tested.get() != null && !paired.equals(test.id()) && !there.isEmpty()) {
            paired = test.id();
            first.set(test.reference().orElse(there.get(0)));
            second.set(furthest(there));
        }
    }

    /** The configuration whose swingweight is furthest from the first one's: what is worth looking at to begin with. */
    private Configuration furthest(List<Configuration> there) {
        Configuration furthest = second.get();
        double most = 0;
        for (Configuration configuration : there) {
            double apart = apart(configuration);
            if (apart > most) {
                most = apart;
                furthest = configuration;
            }
        }
        return furthest;
    }

    private double apart(Configuration configuration) {
        return balance(first.get()).filter(from -> from.swingweight() != null)
                .flatMap(from -> balance(configuration).filter(to -> to.swingweight() != null)
                        .map(to -> Math.abs(to.swingweight().points() - from.swingweight().points()))).orElse(0.0);
    }

    /** The configuration as it is now, if the test still has it. */
    private static Optional<Configuration> kept(Configuration before, List<Configuration> there) {
        return before == null ? Optional.empty()
                : there.stream().filter(c -> c.id().equals(before.id())).findFirst();
    }

    /** Whether there is any configuration to look at. */
    public boolean hasConfigurations() {
        return !workbench.test().get().configurations().isEmpty();
    }

    /** Whether any swingweight is known, so that there is a lever to speak of. */
    public boolean knowsClub() {
        SessionBalance.Tested now = tested.get();
        return now != null && now.balance().configurations().stream().anyMatch(c -> c.swingweight() != null);
    }

    /** The balance of a configuration of the test in view. */
    public Optional<ConfigurationBalance> balance(Configuration configuration) {
        return tested.get() == null || configuration == null ? Optional.empty()
                : tested.get().balance().configuration(configuration.id());
    }

    /** The lever between the two configurations, at the present share; empty while it can't be drawn. */
    public Optional<LeverPicture> picture() {
        Optional<Lever> from = lever(first.get());
        Optional<Lever> to = lever(second.get());
        ShopSettings settings = workbench.settings().get();
        return from.flatMap(left -> to.map(right -> new LeverPicture(left, right, share.get(), settings.units(),
                settings.decimalMark())));
    }

    Optional<Lever> lever(Configuration configuration) {
        return balance(configuration).map(balance -> Lever.of(balance, configuration, workbench.test().get().club(),
                tested.get().balance().scale()));
    }

    /** The figures on the way, in words: 'C9.1, balances at 27.3 in, 448 g'. */
    public String onTheWay() {
        Optional<ConfigurationBalance> from = balance(first.get());
        Optional<ConfigurationBalance> to = balance(second.get());
        if (from.isEmpty() || to.isEmpty() || from.get().swingweight() == null || to.get().swingweight() == null) {
            return "";
        }
        Figures figures = new Figures(workbench.settings().get());
        StringBuilder text = new StringBuilder(new Swingweight(
                mix(from.get().swingweight().points(), to.get().swingweight().points())).text());
        if (from.get().balancePointMm() != null && to.get().balancePointMm() != null) {
            text.append(", balances at ")
                    .append(figures.place(mix(from.get().balancePointMm(), to.get().balancePointMm())))
                    .append(' ').append(figures.length().symbol());
        }
        if (from.get().inertiaKgCm2() != null && to.get().inertiaKgCm2() != null) {
            text.append(", inertia ").append(figures.number(mix(from.get().inertiaKgCm2(), to.get().inertiaKgCm2()), 0))
                    .append(" kg·cm²");
        }
        return text.toString();
    }

    private double mix(double from, double to) {
        return from + (to - from) * share.get();
    }

    /** What the second does to the first, in one sentence; empty where it can't be said. */
    public String difference() {
        Optional<ConfigurationBalance> from = balance(first.get());
        Optional<ConfigurationBalance> to = balance(second.get());
        if (from.isEmpty() || to.isEmpty() || from.get().label().equals(to.get().label())
                || from.get().swingweight() == null || to.get().swingweight() == null) {
            return "";
        }
        Figures figures = new Figures(workbench.settings().get());
        double points = to.get().swingweight().points() - from.get().swingweight().points();
        StringBuilder text = new StringBuilder(to.get().label() + " against " + from.get().label() + ": "
                + figures.signed(points, 1) + " points of swingweight");
        if (from.get().inertiaKgCm2() != null && to.get().inertiaKgCm2() != null) {
            double inertia = to.get().inertiaKgCm2() - from.get().inertiaKgCm2();
            text.append(", ").append(figures.signed(inertia, 0)).append(" kg·cm² of inertia (")
                    .append(figures.signed(100 * inertia / from.get().inertiaKgCm2(), 1)).append(" %)");
        }
        return text.append('.').toString();
    }

    /** What to measure and what is unusual, each sentence once. */
    public List<String> sentences() {
        Set<String> sentences = new LinkedHashSet<>();
        if (tested.get() != null) {
            TestBalance balance = tested.get().balance();
            sentences.addAll(balance.sentences());
            sentences.addAll(balance.warnings());
            for (ConfigurationBalance configuration : balance.configurations()) {
                sentences.addAll(configuration.sentences());
                sentences.addAll(configuration.warnings());
            }
        }
        return List.copyOf(sentences);
    }
}

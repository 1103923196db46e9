package gripwright.desktop.balance;

import gripwright.balance.BackwardSolver;
import gripwright.balance.ConfigurationBalance;
import gripwright.balance.Remedy;
import gripwright.balance.SessionBalance;
import gripwright.balance.SwingweightScale;
import gripwright.balance.Wanted;
import gripwright.charts.Lever;
import gripwright.charts.LeverPicture;
import gripwright.desktop.support.Choice;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.SwingweightText;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.BuildUp;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.session.Edit;
import gripwright.units.Swingweight;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;

/** From a wanted figure of one configuration back to head mass, butt weight or length. */
public final class SolverViewModel {

    /** What figure is wanted. */
    public enum Kind {
        SWINGWEIGHT("swingweight", 10),
        INERTIA("inertia", 150),
        BALANCE_POINT("balance point", 40);

        private final String text;
        private final double reach;

        Kind(String text, double reach) {
            this.text = text;
            this.reach = reach;
        }

        public String text() {
            return text;
        }

        /** How far the slider goes to each side of the present figure: points, kg·cm² or mm. */
        public double reach() {
            return reach;
        }
    }

    /** How deep a butt weight can be put by the slider, mm. */
    public static final double DEEPEST_MM = 250;

    private final BalanceViewModel model;
    private final Workbench workbench;
    private final ObjectProperty<Configuration> configuration = new SimpleObjectProperty<>();
    private final ObjectProperty<Kind> kind = new SimpleObjectProperty<>(Kind.SWINGWEIGHT);
    private final DoubleProperty wanted = new SimpleDoubleProperty(Double.NaN);
    private final DoubleProperty buttPlace = new SimpleDoubleProperty();
    private final ReadOnlyObjectWrapper<List<Remedy>> remedies = new ReadOnlyObjectWrapper<>(List.of());
    private String wantedFor = "";

    SolverViewModel(BalanceViewModel model) {
        this.model = model;
        this.workbench = model.workbench();
        buttPlace.set(workbench.settings().get().balance().buttWeightMm());
        model.tested().subscribe(this::arrived);
        configuration.subscribe(now -> solve());
        kind.subscribe(now -> resetWanted());
        wanted.subscribe(now -> solve());
        buttPlace.subscribe(now -> solve());
        workbench.settings().subscribe(now -> solve());
    }

    Workbench workbench() {
        return workbench;
    }

    /** The configuration that is brought somewhere; null without any. */
    public ObjectProperty<Configuration> configuration() {
        return configuration;
    }

    public ObjectProperty<Kind> kind() {
        return kind;
    }

    /** The wanted figure in its own unit: points above A0, kg·cm² or mm; NaN while nothing is known. */
    public DoubleProperty wanted() {
        return wanted;
    }

    /** Where a butt weight's centre goes, mm from the shaft's butt end. */
    public DoubleProperty buttPlace() {
        return buttPlace;
    }

    /** The three ways; empty while the wanted figure is not known. */
    public ReadOnlyObjectProperty<List<Remedy>> remedies() {
        return remedies.getReadOnlyProperty();
    }

    private void arrived(SessionBalance.Tested now) {
        ClubTest test = workbench.test().get();
        Configuration before = configuration.get();
        Configuration kept = before == null ? null : test.configuration(before.id()).orElse(null);
        Configuration other = test.configurations().stream()
                .filter(c -> test.reference().filter(c::equals).isEmpty()).findFirst()
                .or(() -> test.configurations().stream().findFirst()).orElse(null);
        configuration.set(kept != null ? kept : other);
        String key = test.id() + " " + kind.get();
        if (!key.equals(wantedFor) || Double.isNaN(wanted.get())) {
            resetWanted();
        }
        solve();
    }

    /** The reference's figure: what most people want back. */
    private void resetWanted() {
        ClubTest test = workbench.test().get();
        Double figure = test.reference().flatMap(model::balance).map(this::figure).orElse(null);
        wantedFor = test.id() + " " + kind.get();
        wanted.set(figure == null ? Double.NaN : figure);
        solve();
    }

    /** The present figure of the chosen kind; null where it is not known. */
    private Double figure(ConfigurationBalance balance) {
        return switch (kind.get()) {
            case SWINGWEIGHT -> balance.swingweight() == null ? null : Double.valueOf(balance.swingweight().points());
            case INERTIA -> balance.inertiaKgCm2();
            case BALANCE_POINT -> balance.balancePointMm();
        };
    }

    /** The present figure of the chosen configuration; null where it is not known. */
    public Double present() {
        return model.balance(configuration.get()).map(this::figure).orElse(null);
    }

    private void solve() {
        Optional<ConfigurationBalance> balance = model.balance(configuration.get());
        if (balance.isEmpty() || Double.isNaN(wanted.get()) || present() == null) {
            remedies.set(List.of());
            return;
        }
        remedies.set(BackwardSolver.with(workbench.settings().get()).solve(balance.get(), wantedFigure(),
                buttPlace.get()));
    }

    private Wanted wantedFigure() {
        return switch (kind.get()) {
            case SWINGWEIGHT -> new Wanted.AtSwingweight(new Swingweight(wanted.get()));
            case INERTIA -> new Wanted.AtInertia(Math.max(1, wanted.get()));
            case BALANCE_POINT -> new Wanted.AtBalancePoint(Math.max(1, wanted.get()));
        };
    }

    /** The lever as it is and as the first way that can be done would make it; empty where there is none by a mass. */
    Optional<LeverPicture> picture() {
        Optional<Lever> now = model.lever(configuration.get());
        Remedy way = remedies.get().stream().filter(remedy -> remedy.means() != Remedy.Means.LENGTH
                && remedy.feasible() && remedy.amount() != null && remedy.after() != null).findFirst().orElse(null);
        if (now.isEmpty() || way == null) {
            return Optional.empty();
        }
        SwingweightScale scale = SwingweightScale.of(workbench.settings().get().balance());
        Lever.Weight more = new Lever.Weight("remedy", way.means().text(), way.amount(), way.positionMm(),
                scale.points(way.amount(), way.positionMm()));
        Lever then = now.get().with(more, way.after().balancePointMm(), way.after().swingweight(),
                now.get().mark().label() + " with " + way.means().text());
        return Optional.of(new LeverPicture(now.get(), then, 1, workbench.settings().get().units(),
                workbench.settings().get().decimalMark()));
    }

    Choice<Kind> kindChoice() {
        return new Choice<>("wanted figure", kind, chosen -> {
            kind.set(chosen);
            return Optional.empty();
        });
    }

    /** The wanted swingweight as it is typed. */
    TextEntry wantedSwingweight() {
        ObservableValue<String> kept = wanted.map(points -> Double.isNaN(points.doubleValue()) ? ""
                : new Swingweight(points.doubleValue()).text());
        return new TextEntry("wanted swingweight", kept, typed -> {
            Optional<String> problem = SwingweightText.problem(typed);
            if (problem.isEmpty() && !typed.isBlank()) {
                wanted.set(SwingweightText.needed(typed).points());
            }
            return problem;
        });
    }

    /** The wanted inertia or balance point as it is typed. */
    NumberEntry wantedNumber() {
        boolean place = kind.get() == Kind.BALANCE_POINT;
        return entry("wanted " + kind.get().text(), place ? Quantity.LENGTH : Quantity.PLAIN, wanted);
    }

    NumberEntry buttPlaceEntry() {
        return entry("place of a butt weight", Quantity.LENGTH, buttPlace);
    }

    private NumberEntry entry(String name, Quantity quantity, DoubleProperty property) {
        return new NumberEntry(name, NumberEntry.Blank.IS_A_PROBLEM,
                property.map(value -> Double.isNaN(value.doubleValue()) ? null : (Double) value.doubleValue()),
                workbench.style(quantity), typed -> {
                    if (!(typed >= 0)) {
                        return Optional.of("The " + name + " can't be negative.");
                    }
                    property.set(typed);
                    return Optional.empty();
                });
    }

    /** Whether a remedy can be written into the configuration: mass at the head, or a weight in an empty butt. */
    boolean canApply(Remedy remedy) {
        if (remedy.amount() == null || !remedy.feasible() || Math.abs(remedy.amount()) < 0.05
                || configuration.get() == null) {
            return false;
        }
        return remedy.means() == Remedy.Means.HEAD_MASS
                || remedy.means() == Remedy.Means.BUTT_WEIGHT && configuration.get().buildUp().ballastGrams() == 0;
    }

    /** Writes a remedy into the configuration; undo takes it back. */
    void apply(Remedy remedy) {
        String label = configuration.get().label();
        double grams = Math.round(remedy.amount() * 10) / 10.0;
        if (remedy.means() == Remedy.Means.HEAD_MASS) {
            change("Add head mass to " + label,
                    now -> now.withHeadMassAddedGrams(Math.max(0, now.headMassAddedGrams() + grams)));
        } else {
            double place = buttPlace.get();
            change("Put a butt weight into " + label, now -> {
                BuildUp buildUp = now.buildUp();
                return now.withBuildUp(buildUp.withBallastPositionMm(place).withBallastGrams(grams));
            });
        }
    }

    private void change(String label, UnaryOperator<Configuration> change) {
        String testId = workbench.test().get().id();
        String id = configuration.get().id();
        workbench.applyOrSay(new Edit(label, session -> session.test(testId)
                .flatMap(test -> test.configuration(id)
                        .map(now -> session.withTest(test.withConfiguration(change.apply(now))))).orElse(session)));
    }
}

package gripwright.desktop.plan;

import gripwright.charts.Mark;
import gripwright.desktop.support.Choice;
import gripwright.desktop.support.Derived;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.SwingweightText;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.BuildUp;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Diameter;
import gripwright.model.Grip;
import gripwright.model.MarkerShape;
import gripwright.model.PhysicalClub;
import gripwright.model.Tape;
import gripwright.planning.PlanCheck;
import gripwright.session.edits.Identities;
import gripwright.session.edits.PlanEdits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;

/** The test matrix: one column a configuration, its fields, and what can be done with the columns. */
public final class MatrixViewModel {

    private static final double SAME_PLACE_MM = 0.5;

    private final Workbench workbench;
    private final Subject<ClubTest> test;
    private final Derived<PlanCheck> check;

    MatrixViewModel(Workbench workbench) {
        this.workbench = workbench;
        test = Subject.test(workbench);
        check = workbench.derive(snapshot -> PlanCheck.of(snapshot.test(), snapshot.settings()));
    }

    /** What the matrix comes to; null until it has been worked out. */
    Derived<PlanCheck> check() {
        return check;
    }

    /** The columns' identities, the physical clubs and the stock: columns are made anew when one of them changes. */
    ObservableValue<List<Object>> shape() {
        return workbench.test().flatMap(now -> workbench.stock().flatMap(stock -> workbench.settings().map(settings -> {
            List<Object> shape = new ArrayList<>();
            now.configurations().forEach(one -> shape.addAll(List.of(one.id(), one.grip().id(), one.grip().name())));
            shape.add(now.physicalClubs());
            shape.add(stock);
            shape.add(settings.rulerPositionsMm());
            shape.add(settings.units());
            return shape;
        })));
    }

    List<Grip> stockGrips() {
        return workbench.stock().get().grips();
    }

    List<Tape> tapes() {
        return workbench.stock().get().tapes().stream().filter(tape -> !tape.doubleSided()).toList();
    }

    List<Double> rulerPositions() {
        return workbench.settings().get().rulerPositionsMm();
    }

    List<PhysicalClub> physicalClubs() {
        return test.get().physicalClubs();
    }

    List<Column> columns() {
        List<Column> columns = new ArrayList<>();
        for (int index = 0; index < test.get().configurations().size(); index++) {
            columns.add(new Column(index));
        }
        return columns;
    }

    /** Adds a configuration with this grip; the first one of a player's own is the gamer. */
    void add(Grip grip) {
        ClubTest now = test.get();
        Configuration configuration = Configuration.ofIndex(now.configurations().size(),
                Identities.newConfiguration(now), Identities.newLabel(now), grip, BuildUp.none())
                .withGamer(grip.playersOwn() && now.configurations().stream().noneMatch(Configuration::gamer));
        workbench.applyOrSay(PlanEdits.add(now.id(), configuration));
    }

    /** One configuration as fields and actions. */
    final class Column {

        private final int index;
        private final String id;
        private final String label;
        private final Subject<Configuration> configuration;
        private final Subject<BuildUp> buildUp;

        Column(int index) {
            this.index = index;
            configuration = test.element(index, ClubTest::configurations, ClubTest::withConfigurations);
            buildUp = configuration.part(Configuration::buildUp, Configuration::withBuildUp);
            id = configuration.get().id();
            label = configuration.get().label();
        }

        String id() {
            return id;
        }

        String label() {
            return label;
        }

        ObservableValue<Mark> mark() {
            return configuration.value().map(Mark::of);
        }

        ObservableValue<String> gripName() {
            return configuration.value().map(now -> now.grip().name());
        }

        ObservableValue<String> tapeName() {
            return configuration.value().map(now -> now.buildUp().tape() == null ? "none" : now.buildUp().tape().name());
        }

        TextEntry labelEntry() {
            return configuration.text("label of " + label, Configuration::label, Configuration::withLabel);
        }

        NumberEntry fullWraps() {
            return buildUp.count("full wraps of " + label, BuildUp::fullWraps,
                    (now, wraps) -> taped(now.withFullWraps(wraps)));
        }

        NumberEntry lowerWraps() {
            return buildUp.count("lower wraps of " + label, BuildUp::lowerWraps,
                    (now, wraps) -> taped(now.withLowerWraps(wraps)));
        }

        NumberEntry lowerFrom() {
            return buildUp.number("start of the lower wraps of " + label, Quantity.LENGTH, BuildUp::lowerFromMm,
                    BuildUp::withLowerFromMm);
        }

        /** Wraps are of the shop's first tape until another is chosen. */
        private BuildUp taped(BuildUp now) {
            boolean wants = now.tape() == null && now.fullWraps() + now.lowerWraps() > 0 && !tapes().isEmpty();
            return wants ? now.withTape(tapes().get(0)) : now;
        }

        NumberEntry ballast() {
            double usual = workbench.settings().get().gripBalancePointMm();
            return buildUp.needed("ballast of " + label, Quantity.MASS, BuildUp::ballastGrams, (now, grams) ->
                    (now.ballastPositionMm() == null ? now.withBallastPositionMm(usual) : now).withBallastGrams(grams));
        }

        NumberEntry ballastAt() {
            return buildUp.number("place of the ballast of " + label, Quantity.LENGTH, BuildUp::ballastPositionMm,
                    BuildUp::withBallastPositionMm);
        }

        NumberEntry headMass() {
            return configuration.needed("head mass added to " + label, Quantity.MASS,
                    Configuration::headMassAddedGrams, Configuration::withHeadMassAddedGrams);
        }

        Choice<String> physicalClub() {
            return configuration.choice("club that " + label + " is on", Configuration::physicalClubId,
                    Configuration::withPhysicalClubId);
        }

        ObservableValue<Boolean> isGamer() {
            return configuration.value().map(Configuration::gamer);
        }

        ObservableValue<Boolean> isReference() {
            return workbench.test().map(now -> now.reference().map(Configuration::id).filter(id::equals).isPresent());
        }

        void makeGamer(boolean gamer) {
            workbench.applyOrSay(PlanEdits.gamer(workbench.session().get(), testId(), gamer ? id : null));
        }

        void makeReference() {
            workbench.applyOrSay(PlanEdits.reference(workbench.session().get(), testId(), id));
        }

        /** The diameter measured as fitted at a ruler position; blank leaves it to the prediction. */
        NumberEntry fitted(double placeMm) {
            return configuration.number("diameter of " + label + " as fitted", Quantity.DIAMETER,
                    now -> now.fittedDiameters().stream().filter(d -> same(d.positionMm(), placeMm)).findFirst()
                            .map(Diameter::diameterMm).orElse(null),
                    (now, diameter) -> now.withFittedDiameters(with(now.fittedDiameters(), placeMm, diameter)));
        }

        TextEntry swingweightRead() {
            return configuration.text("swingweight read with " + label,
                    now -> SwingweightText.write(now.swingweightRead()),
                    (now, text) -> now.withSwingweightRead(SwingweightText.optional(text)));
        }

        NumberEntry totalMassRead() {
            return configuration.number("mass of the club weighed with " + label, Quantity.MASS,
                    Configuration::totalMassReadGrams, Configuration::withTotalMassReadGrams);
        }

        void takeGrip(Grip grip) {
            configuration.editOrSay("Put '" + grip.name() + "' into " + label, now -> now.withGrip(grip));
        }

        void takeTape(Tape tape) {
            buildUp.editOrSay("Set tape of " + label, now -> now.withTape(tape));
        }

        void takeMarker(MarkerShape marker) {
            configuration.editOrSay("Set marker of " + label, now -> now.withMarker(marker));
        }

        void takeColour(int colour) {
            configuration.editOrSay("Set colour of " + label, now -> now.withColourIndex(colour));
        }

        /** The grip of the stock list where that has changed since the test was planned. */
        Optional<Grip> changedInStock() {
            Grip own = configuration.get().grip();
            return stockGrips().stream().filter(grip -> grip.id().equals(own.id()) && !grip.equals(own)).findFirst();
        }

        void move(int by) {
            workbench.applyOrSay(PlanEdits.move(workbench.session().get(), testId(), id, index + by));
        }

        boolean isFirst() {
            return index == 0;
        }

        boolean isLast() {
            return index == test.get().configurations().size() - 1;
        }

        void remove() {
            workbench.applyOrSay(PlanEdits.remove(workbench.session().get(), testId(), id));
        }

        /** A text worked out from the check of this column; empty until there is one. */
        ObservableValue<String> figure(Function<PlanCheck.Column, String> figure) {
            BiFunction<PlanCheck, String, String> of = (now, column) ->
                    now.column(column).map(figure).filter(Objects::nonNull).orElse("");
            return check.value().map(now -> of.apply(now, id)).orElse("");
        }
    }

    private String testId() {
        return test.get().id();
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) < SAME_PLACE_MM;
    }

    private static List<Diameter> with(List<Diameter> diameters, double placeMm, Double diameter) {
        List<Diameter> changed = new ArrayList<>(diameters);
        changed.removeIf(d -> same(d.positionMm(), placeMm));
        if (diameter != null) {
            changed.add(new Diameter(placeMm, diameter));
        }
        changed.sort(Comparator.comparingDouble(Diameter::positionMm));
        return changed;
    }
}

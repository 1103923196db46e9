package gripwright.desktop.setup;

import gripwright.desktop.support.Choice;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.NumberStyle;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubKind;
import gripwright.model.ClubTest;
import gripwright.model.Diameter;
import gripwright.model.Session;
import gripwright.model.TestClub;
import gripwright.session.edits.Identities;
import gripwright.session.edits.SetupEdits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import javafx.beans.value.ObservableValue;

/** The test club in view: what it is, its lengths and its shaft, and the tests of the session. */
public final class ClubViewModel {

    /** Where a shaft is usually measured: butt, 3, 6 and 9 in; common practice, no source. */
    private static final List<Double> USUAL_PLACES_MM = List.of(0.0, 76.2, 152.4, 228.6);
    private static final double SAME_PLACE_MM = 0.5;

    private final Workbench workbench;
    private final Subject<ClubTest> test;
    private final Subject<TestClub> club;

    ClubViewModel(Workbench workbench) {
        this.workbench = workbench;
        test = Subject.test(workbench);
        club = test.part(ClubTest::club, ClubTest::withClub);
    }

    /** The club of the test in view, for its parts and readings. */
    Subject<TestClub> club() {
        return club;
    }

    Choice<ClubKind> kind() {
        return club.choice("kind of club", TestClub::kind, TestClub::withKind);
    }

    TextEntry name() {
        return club.text("name of the club", TestClub::name, TestClub::withName);
    }

    NumberEntry length() {
        return club.number("length of the club", Quantity.LENGTH, TestClub::lengthMm, TestClub::withLengthMm);
    }

    NumberEntry loft() {
        return club.number("loft", Quantity.ANGLE, TestClub::loftDegrees, TestClub::withLoftDegrees);
    }

    NumberEntry lie() {
        return club.number("lie", Quantity.ANGLE, TestClub::lieDegrees, TestClub::withLieDegrees);
    }

    /** Places of the shaft that have a field: the usual ones and whatever else was measured, mm from the butt end. */
    ObservableValue<List<Double>> shaftPlaces() {
        return club.value().map(now -> {
            TreeSet<Double> places = new TreeSet<>(USUAL_PLACES_MM);
            now.shaftDiameters().stream().map(Diameter::positionMm)
                    .filter(place -> USUAL_PLACES_MM.stream().noneMatch(usual -> same(usual, place)))
                    .forEach(places::add);
            return List.copyOf(places);
        });
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) < SAME_PLACE_MM;
    }

    NumberEntry shaftDiameter(double placeMm) {
        return club.number("shaft diameter at " + place(placeMm), Quantity.DIAMETER,
                now -> now.shaftDiameters().stream().filter(d -> same(d.positionMm(), placeMm)).findFirst()
                        .map(Diameter::diameterMm).orElse(null),
                (now, diameter) -> now.withShaftDiameters(withDiameter(now.shaftDiameters(), placeMm, diameter)));
    }

    private static List<Diameter> withDiameter(List<Diameter> diameters, double placeMm, Double diameter) {
        List<Diameter> changed = new ArrayList<>(diameters);
        changed.removeIf(d -> same(d.positionMm(), placeMm));
        if (diameter != null) {
            changed.add(new Diameter(placeMm, diameter));
        }
        changed.sort(Comparator.comparingDouble(Diameter::positionMm));
        return changed;
    }

    /** A place of the shaft in words: 'butt', '3 in'. */
    String place(double placeMm) {
        if (placeMm == 0) {
            return "butt";
        }
        NumberStyle style = workbench.style(Quantity.PLAIN).getValue();
        var unit = workbench.settings().get().units().of(Quantity.LENGTH.dimension());
        return new NumberStyle(style.text(), unit, 0, 1).write(placeMm) + " " + unit.symbol();
    }

    /** Whether another test may be added to the session. */
    ObservableValue<Boolean> mayAdd() {
        return workbench.session().map(session -> session.tests().size() < Session.MOST_TESTS);
    }

    /** Whether the test in view may be taken away: a session keeps at least one. */
    ObservableValue<Boolean> mayRemove() {
        return workbench.session().map(session -> session.tests().size() > 1);
    }

    /** Adds a test with a club of the kind that is usually tried next, and brings it into view. */
    void addTest() {
        List<ClubTest> tests = workbench.session().get().tests();
        boolean hasDriver = tests.stream().anyMatch(t -> t.club().kind() == ClubKind.DRIVER);
        TestClub next = hasDriver ? TestClub.named(ClubKind.WEDGE, "wedge") : TestClub.named(ClubKind.DRIVER, "driver");
        String id = Identities.newTest(workbench.session().get());
        workbench.applyOrSay(SetupEdits.addTest(next));
        workbench.selectTest(id);
    }

    /** Takes the test in view away, where nothing was hit in it yet. */
    void removeTest() {
        workbench.applyOrSay(SetupEdits.removeTest(workbench.session().get(), workbench.test().get().id()));
    }
}

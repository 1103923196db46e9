package gripwright.desktop.balance;

import gripwright.balance.SessionBalance;
import gripwright.balance.SetPlan;
import gripwright.desktop.support.Choice;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.SwingweightText;
import gripwright.desktop.support.TabSeparated;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.ClubKind;
import gripwright.model.Diameter;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.session.Edit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;

/** The player's set as rows of fields, and what the bench has to do with each club. */
public final class SetViewModel {

    private final BalanceViewModel model;
    private final Workbench workbench;
    private final Subject<Session> session;

    SetViewModel(BalanceViewModel model) {
        this.model = model;
        this.workbench = model.workbench();
        this.session = Subject.session(workbench);
    }

    Workbench workbench() {
        return workbench;
    }

    /** One club as fields. */
    record Row(String id, TextEntry name, Choice<ClubKind> kind, NumberEntry length, NumberEntry butt,
            TextEntry present, NumberEntry gripOff, NumberEntry totalMass, TextEntry bare, TextEntry done,
            Choice<SetClub.Target> target, TextEntry targetSwingweight, NumberEntry targetInertia, Runnable remove) {
    }

    /** Identities, families and targets of the clubs; the rows are made anew when it changes. */
    ObservableValue<List<String>> order() {
        return session.value().map(now -> now.set().stream()
                .map(club -> club.id() + " " + club.kind() + " " + club.target()).toList());
    }

    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int index = 0; index < session.get().set().size(); index++) {
            rows.add(row(index));
        }
        return rows;
    }

    private Row row(int index) {
        Subject<SetClub> club = session.element(index, Session::set, Session::withSet);
        String name = club.get().name();
        return new Row(club.get().id(), club.text("name of club " + (index + 1), SetClub::name, SetClub::withName),
                club.choice("family of the " + name, SetClub::kind, SetClub::withKind),
                club.number("length of the " + name, Quantity.LENGTH, SetClub::lengthMm, SetClub::withLengthMm),
                club.number("butt diameter of the " + name, Quantity.DIAMETER, SetViewModel::butt,
                        SetViewModel::withButt),
                swingweight(club, "swingweight of the " + name + " now", SetClub::presentSwingweight,
                        SetClub::withPresentSwingweight),
                club.number("mass of grip and tape off the " + name, Quantity.MASS, SetClub::gripOffGrams,
                        SetClub::withGripOffGrams),
                club.number("mass of the " + name, Quantity.MASS, SetClub::totalMassGrams, SetClub::withTotalMassGrams),
                swingweight(club, "swingweight of the " + name + " stripped", SetClub::bareSwingweight,
                        SetClub::withBareSwingweight),
                swingweight(club, "swingweight of the " + name + " when done", SetClub::finalSwingweight,
                        SetClub::withFinalSwingweight),
                club.choice("target of the " + name, SetClub::target, SetViewModel::withTarget),
                swingweight(club, "target of the " + name, SetClub::targetSwingweight, SetViewModel::withTargetValue),
                club.number("target inertia of the " + name, Quantity.PLAIN, SetClub::targetInertiaKgCm2,
                        SetClub::withTargetInertiaKgCm2),
                () -> remove(index, name));
    }

    private static TextEntry swingweight(Subject<SetClub> club, String name,
            Function<SetClub, gripwright.units.Swingweight> get,
            BiFunction<SetClub, gripwright.units.Swingweight, SetClub> set) {
        return club.text(name, now -> SwingweightText.write(get.apply(now)),
                (now, text) -> set.apply(now, SwingweightText.optional(text)));
    }

    /** The diameter at the butt end; null where it was not measured. */
    private static Double butt(SetClub club) {
        return club.shaftDiameters().stream().filter(diameter -> diameter.positionMm() == 0)
                .map(Diameter::diameterMm).findFirst().orElse(null);
    }

    private static SetClub withButt(SetClub club, Double diameterMm) {
        List<Diameter> diameters = new ArrayList<>(
                club.shaftDiameters().stream().filter(diameter -> diameter.positionMm() != 0).toList());
        if (diameterMm != null) {
            diameters.add(0, new Diameter(0, diameterMm));
        }
        return club.withShaftDiameters(diameters);
    }

    /** A target that is a value begins with what the club reads now, or D2. */
    private static SetClub withTarget(SetClub club, SetClub.Target target) {
        if (target == SetClub.Target.VALUE && club.targetSwingweight() == null) {
            return club.withTargetSwingweight(club.presentSwingweight() != null ? club.presentSwingweight()
                    : SwingweightText.needed("D2")).withTarget(target);
        }
        return club.withTarget(target);
    }

    private static SetClub withTargetValue(SetClub club, gripwright.units.Swingweight value) {
        return value == null ? club.withTarget(SetClub.Target.AS_NOW).withTargetSwingweight(null)
                : club.withTargetSwingweight(value);
    }

    private void remove(int index, String name) {
        change("Remove the " + name + " from the set", clubs -> clubs.remove(index));
    }

    /** Adds one more club like the last one. */
    void add() {
        change("Add a club to the set", clubs -> {
            ClubKind kind = clubs.isEmpty() ? ClubKind.IRON : clubs.get(clubs.size() - 1).kind();
            clubs.add(SetClub.named(UUID.randomUUID().toString(), "club " + (clubs.size() + 1), kind));
        });
    }

    /** Starts with what most bags hold. */
    void addUsual() {
        change("Start with a usual set", clubs -> {
            clubs.add(named("driver", ClubKind.DRIVER));
            clubs.add(named("5-wood", ClubKind.FAIRWAY_WOOD));
            clubs.add(named("4-hybrid", ClubKind.HYBRID));
            for (int number = 5; number <= 9; number++) {
                clubs.add(named(number + "-iron", ClubKind.IRON));
            }
            clubs.add(named("pitching wedge", ClubKind.WEDGE));
            clubs.add(named("sand wedge", ClubKind.WEDGE));
            clubs.add(named("putter", ClubKind.PUTTER));
        });
    }

    private static SetClub named(String name, ClubKind kind) {
        return SetClub.named(UUID.randomUUID().toString(), name, kind);
    }

    private void change(String label, java.util.function.Consumer<List<SetClub>> change) {
        workbench.applyOrSay(new Edit(label, now -> {
            List<SetClub> clubs = new ArrayList<>(now.set());
            change.accept(clubs);
            return now.withSet(clubs);
        }));
    }

    /** The plan of the set; null while there is none. */
    public SetPlan plan() {
        SessionBalance now = model.session().get();
        return now == null ? null : now.set();
    }

    ObservableValue<SessionBalance> planned() {
        return model.session();
    }

    List<SetRow> table() {
        return plan() == null ? List.of() : SetRow.of(plan(), workbench.settings().get());
    }

    /** What has to be known, 'club: sentence', then what concerns the whole set. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        if (plan() != null) {
            plan().rows().forEach(row -> row.sentences().forEach(text -> sentences.add(row.club().name() + ": " + text)));
            sentences.addAll(plan().sentences());
        }
        return sentences;
    }

    /** The table and the stock to take as comma-separated text. */
    public String csv() {
        char mark = workbench.settings().get().decimalMark();
        String table = SetCsv.of(SetRow.headings(workbench.settings().get()),
                table().stream().map(SetRow::cells).toList(), mark);
        return table + SetCsv.of(List.of(), List.of(), mark) + SetCsv.of(List.of("stock", "needed", "unit", "in stock"),
                stock(), mark);
    }

    private List<List<String>> stock() {
        Figures figures = new Figures(workbench.settings().get());
        return plan() == null ? List.of() : plan().stock().stream().map(line -> List.of(line.item(),
                figures.number(line.needed(), line.unit().equals("g") ? 1 : 0), line.unit(),
                line.inStock() == null ? "" : line.inStock().toString())).toList();
    }

    /** The table as tab-separated text for the clipboard. */
    public String copied() {
        return TabSeparated.of(SetRow.headings(workbench.settings().get()),
                table().stream().map(row -> row.cells().stream().map(SetCsv::plain).toList()).toList());
    }

    /** Writes the table away from the window's thread and says what became of it. */
    void save(Path file) {
        String text = csv();
        workbench.inBackground(() -> write(file, text), done -> workbench.say("Written: " + file),
                failed -> workbench.sayProblem(failed.getMessage()));
    }

    private static Path write(Path file, String text) throws IOException {
        try {
            return Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException refused) {
            throw new IOException("The table could not be written to " + file
                    + ". Choose another folder; nothing of the session is lost.", refused);
        }
    }
}

package gripwright.desktop.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.desktop.support.DemoSessions;
import gripwright.desktop.support.ShopEdit;
import gripwright.desktop.support.Workbench;
import gripwright.desktop.support.Workbenches;
import gripwright.model.ClubKind;
import gripwright.model.SetClub;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetViewModelTest {

    private final Workbench workbench = Workbenches.on(DemoSessions.leftHanded().withSet(List.of()));
    private final SetViewModel set = new SetViewModel(new BalanceViewModel(workbench));

    @Test
    void aUsualSetIsOneStepAndCanBeTakenBack() {
        set.addUsual();
        assertThat(set.rows()).hasSize(11);
        assertThat(workbench.undoLabel().get()).isEqualTo("Start with a usual set");
        workbench.undo();
        assertThat(set.rows()).isEmpty();
    }

    @Test
    void typedFiguresBecomeAPlan() {
        set.add();
        SetViewModel.Row row = set.rows().get(0);
        type(row.name(), "8-iron");
        type(row.length(), "36.5");
        type(row.present(), "D1");
        type(row.gripOff(), "52");
        SetClub club = workbench.session().get().set().get(0);
        assertThat(club.lengthMm()).isCloseTo(927.1, within(1e-9));
        assertThat(club.presentSwingweight().text()).isEqualTo("D1.0");
        SetRow line = set.table().get(0);
        assertThat(line.club()).isEqualTo("8-iron");
        assertThat(line.target()).isEqualTo("D1.0");
        assertThat(line.headMass()).isNotEqualTo(Figures.NONE);
        assertThat(line.restsOn()).isEqualTo("predicted");
        type(row.bare(), "E0");
        assertThat(set.table().get(0).restsOn()).isEqualTo("from the bare reading");
        assertThat(set.table().get(0).stripped()).isEqualTo("E0.0");
    }

    @Test
    void nonsenseStaysInItsFieldWithASentence() {
        set.add();
        SetViewModel.Row row = set.rows().get(0);
        row.present().text().set("heavy");
        assertThat(row.present().commit()).isFalse();
        assertThat(row.present().problem().get()).contains("not a swingweight");
        assertThat(workbench.session().get().set().get(0).presentSwingweight()).isNull();
    }

    @Test
    void aValueAsTargetBeginsWithWhatTheClubReads() {
        set.add();
        type(set.rows().get(0).present(), "C9");
        assertThat(set.rows().get(0).target().keep().apply(SetClub.Target.VALUE)).isEmpty();
        assertThat(workbench.session().get().set().get(0).targetSwingweight().text()).isEqualTo("C9.0");
    }

    @Test
    void theButtIsKeptBesideOtherDiameters() {
        set.add();
        SetViewModel.Row row = set.rows().get(0);
        type(row.butt(), "0.600");
        assertThat(workbench.session().get().set().get(0).shaftDiameters().get(0).diameterMm())
                .isCloseTo(15.24, within(1e-9));
        type(row.butt(), "");
        assertThat(workbench.session().get().set().get(0).shaftDiameters()).isEmpty();
    }

    @Test
    void spreadsheetsGetPlainSignsAndEmptyCells() {
        assertThat(SetCsv.of(List.of("a", "b"), List.of(List.of("\u22121,5", Figures.NONE)), ','))
                .isEqualTo("a;b\r\n-1,5;\r\n");
        assertThat(SetCsv.of(List.of("a, in", "say \"b\""), List.of(), '.')).isEqualTo("\"a, in\",\"say \"\"b\"\"\"\r\n");
    }

    @Test
    void theTableIsCopiedAndWritten(@TempDir Path folder) throws IOException {
        set.addUsual();
        assertThat(set.copied()).startsWith("Club\tGets\tStripped").contains("driver\t");
        assertThat(set.rows().get(10).kind().kept().getValue()).isEqualTo(ClubKind.PUTTER);
        Path file = folder.resolve("set.csv");
        set.save(file);
        assertThat(Files.readString(file)).startsWith("Club,Gets").contains("putter grip, as the player chooses");
        assertThat(workbench.message().get().text()).contains("Written");
        set.save(folder.resolve("nowhere").resolve("set.csv"));
        assertThat(workbench.message().get().text()).contains("Choose another folder");
    }

    @Test
    void aCommaLocaleGetsSemicolons() {
        workbench.applyOrSay(ShopEdit.settings("Set mark", shop -> shop.withDecimalMark(',')));
        set.add();
        assertThat(set.csv()).startsWith("Club;Gets;");
    }

    @Test
    void whatIsMissingIsSaidForEachClub() {
        set.add();
        assertThat(set.sentences()).anyMatch(text -> text.startsWith("club 1: Read its swingweight"));
    }

    private static void type(gripwright.desktop.support.Entry entry, String text) {
        entry.text().set(text);
        assertThat(entry.commit()).as("%s: %s", entry.name(), entry.problem().get()).isTrue();
    }
}

package gripwright.desktop.setup;

import gripwright.desktop.support.ChoiceField;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.RowGrid;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.SwitchField;
import gripwright.desktop.support.Workbench;
import gripwright.model.Metric;
import gripwright.planning.ReadyGoal;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The goal: a sentence, ready or one's own, and what it makes primary. */
final class GoalSection {

    private final GoalViewModel model;

    GoalSection(Workbench workbench) {
        model = new GoalViewModel(workbench);
    }

    VBox node() {
        RowGrid primaries = new RowGrid(List.of("Primary metric", "Serves when", "Target", "Weight", ""));
        RowGrid guardrails = new RowGrid(List.of("Guardrail", "Serves when", "Lose no more than", ""));
        model.shape().subscribe(shape -> {
            showPrimaries(primaries);
            showGuardrails(guardrails);
        });
        return Sheets.section("Goal", sentence(), primaries, buttons(), guardrails, feel());
    }

    private HBox sentence() {
        MenuButton ready = new MenuButton("Ready sentences");
        ready.setId("ready-goals");
        ready.setMinWidth(MenuButton.USE_PREF_SIZE);
        for (ReadyGoal goal : ReadyGoal.values()) {
            MenuItem item = new MenuItem(goal.sentence());
            item.setOnAction(event -> model.take(goal));
            ready.getItems().add(item);
        }
        EntryField own = new EntryField(model.sentence()).columns(24)
                .prompt("what the player wants, in a sentence").named("goal");
        return new HBox(Sheets.STEP, own, ready);
    }

    private HBox buttons() {
        Button primary = new Button("Add a primary metric");
        primary.setId("add-primary");
        primary.setOnAction(event -> model.addPrimary());
        model.mayAddPrimary().subscribe(may -> primary.setDisable(!may));
        Button guardrail = new Button("Add a guardrail");
        guardrail.setId("add-guardrail");
        guardrail.setOnAction(event -> model.addGuardrail());
        return new HBox(Sheets.STEP, primary, guardrail);
    }

    private HBox feel() {
        Label word = Sheets.quiet("Weight of feel");
        Label percent = Sheets.quiet("% of the overall result");
        HBox row = new HBox(Sheets.STEP, word, new EntryField(model.feelWeight()).columns(3).withoutUnit(), percent,
                new SwitchField("Comfort first", model.comfortFirst()));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private void showPrimaries(RowGrid grid) {
        List<List<Node>> rows = new ArrayList<>();
        for (GoalViewModel.PrimaryRow row : model.primaries()) {
            EntryField target = new EntryField(row.target()).columns(4);
            target.input().setPromptText("0");
            Label plus = Sheets.hint(row.hint());
            plus.setWrapText(false);
            plus.setMinWidth(Label.USE_PREF_SIZE);
            plus.setManaged(row.near() && !row.hint().isEmpty());
            VBox targetCell = new VBox(2, target, plus);
            targetCell.setVisible(row.near());
            rows.add(List.of(new ChoiceField<>(row.metric(), List.of(Metric.values()), Metric::text),
                    new ChoiceField<>(row.serves(), List.of(GoalViewModel.Serves.values()), GoalViewModel.Serves::text),
                    targetCell, new EntryField(row.weight()).columns(2), RowGrid.remove(row.what(), row.remove())));
        }
        grid.show(rows);
        grid.setVisible(!rows.isEmpty());
        grid.setManaged(!rows.isEmpty());
    }

    private void showGuardrails(RowGrid grid) {
        List<List<Node>> rows = new ArrayList<>();
        for (GoalViewModel.GuardrailRow row : model.guardrails()) {
            rows.add(List.of(new ChoiceField<>(row.metric(), List.of(Metric.values()), Metric::text),
                    new ChoiceField<>(row.serves(), List.of(GoalViewModel.Serves.HIGHER, GoalViewModel.Serves.LOWER,
                            GoalViewModel.Serves.NEAR_TARGET, GoalViewModel.Serves.STEADIER), GoalViewModel.Serves::text),
                    new EntryField(row.mostLoss()).columns(4), RowGrid.remove(row.what(), row.remove())));
        }
        grid.show(rows);
        grid.setVisible(!rows.isEmpty());
        grid.setManaged(!rows.isEmpty());
    }
}

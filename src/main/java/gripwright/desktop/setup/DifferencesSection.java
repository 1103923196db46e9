package gripwright.desktop.setup;

import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.RowGrid;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Words;
import gripwright.desktop.support.Workbench;
import gripwright.model.Metric;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The smallest differences that matter, the shop's and this session's, side by side. */
final class DifferencesSection {

    private final DifferencesViewModel model;

    DifferencesSection(Workbench workbench) {
        model = new DifferencesViewModel(workbench);
    }

    VBox node() {
        RowGrid grid = new RowGrid(List.of("", "The shop's", "This session"));
        model.shown().subscribe(metrics -> show(grid, metrics));
        CheckBox all = new CheckBox("All readings");
        all.selectedProperty().bindBidirectional(model.all());
        return Sheets.section("Smallest differences that matter", Sheets.hint("Below these nobody should care. Starting "
                + "values are common practice; a blank for this session takes the shop's."), grid, all);
    }

    private void show(RowGrid grid, List<Metric> metrics) {
        List<List<Node>> rows = new ArrayList<>();
        for (Metric metric : metrics) {
            DifferencesViewModel.Row row = model.row(metric);
            Label name = Sheets.quiet(Words.capitalised(metric.text()));
            name.getStyleClass().add("gw-form-word");
            name.setMinWidth(Label.USE_PREF_SIZE);
            rows.add(List.of(name, new EntryField(row.shop()).columns(5),
                    new EntryField(row.session()).columns(5).prompt("shop's")));
        }
        grid.show(rows);
    }
}

package gripwright.desktop.plan;

import gripwright.charts.StripPicture;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Theme;
import gripwright.desktop.support.Workbench;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the plan can tell, as sentences and small strips. */
final class FindingsSection {

    private final Workbench workbench;
    private final FindingsViewModel model;

    FindingsSection(Workbench workbench, FindingsViewModel model) {
        this.workbench = workbench;
        this.model = model;
    }

    VBox told() {
        VBox sentences = new VBox(Sheets.STEP);
        model.sentences().subscribe(now -> sentences.getChildren().setAll(now == null ? List.of()
                : now.stream().map(Sheets::text).toList()));
        Label cure = Sheets.text("");
        cure.textProperty().bind(model.cure());
        cure.managedProperty().bind(cure.textProperty().isNotEmpty());
        cure.visibleProperty().bind(cure.managedProperty());
        Button apply = new Button("Put this ballast in");
        apply.setId("apply-cure");
        apply.setOnAction(event -> model.applyCure());
        model.mayCure().subscribe(may -> {
            apply.setVisible(Boolean.TRUE.equals(may));
            apply.setManaged(Boolean.TRUE.equals(may));
        });
        return Sheets.section("What the matrix can tell", sentences, cure, apply);
    }

    VBox seen() {
        Label time = Sheets.text("");
        time.textProperty().bind(model.time());
        VBox sights = new VBox(2 * Sheets.STEP);
        model.sights().subscribe(now -> sights.getChildren().setAll(
                now.stream().allMatch(FindingsViewModel.Sight::visible) ? now.stream().map(this::sight).toList()
                        : List.of(Sheets.text(now.get(0).sentence()))));
        return Sheets.section("Time, and what could be seen", time, sights);
    }

    private VBox sight(FindingsViewModel.Sight sight) {
        PictureCanvas picture = new PictureCanvas();
        picture.lookProperty().bind(workbench.pictureLook(Theme.BODY_SIZE));
        picture.setPicture(new StripPicture(sight.strip()));
        picture.setAccessibleText(sight.strip().title() + ": " + sight.sentence());
        return new VBox(Sheets.STEP / 2, picture, Sheets.hint(sight.sentence()));
    }
}

package gripwright.desktop.print;

import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.SegmentField;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.EntryField;
import gripwright.desktop.support.Workbench;
import gripwright.model.ShopSettings;
import java.io.File;
import java.util.List;
import javafx.embed.swing.SwingFXUtils;
import javafx.beans.binding.Bindings;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** Print: what stands on the pages and on which paper, on the left; the pages themselves on the right. */
public final class PrintPlace implements Place {

    private static final double SIDE_WIDTH = 320;

    private final PrintViewModel model;
    private final BorderPane root = new BorderPane();
    private final VBox pages = new VBox(3 * Sheets.STEP);
    private final ScrollPane scroll;
    private final Button save = new Button("Save as PDF \u2026");

    public PrintPlace(Workbench workbench) {
        this.model = new PrintViewModel(workbench);
        root.getStyleClass().add("gw-page");
        pages.setAlignment(Pos.TOP_CENTER);
        pages.setPadding(new Insets(3 * Sheets.STEP));
        pages.getStyleClass().add("gw-paper-table");
        scroll = Sheets.scrolling(pages);
        scroll.setFocusTraversable(true);
        scroll.setAccessibleText("the pages");
        root.setLeft(side(workbench));
        root.setCenter(scroll);
        model.pages().subscribe(this::show);
    }

    private Node side(Workbench workbench) {
        Subject<ShopSettings> shop = Subject.settings(workbench);
        GridPane form = Sheets.form();
        Sheets.line(form, "Paper", new SegmentField<>(
                shop.choice("paper", ShopSettings::paper, ShopSettings::withPaper), List.of("A4", "Letter"), text -> text));
        TextEntry name = shop.text("name of the shop", ShopSettings::shopName, ShopSettings::withShopName);
        TextEntry note = shop.text("note of the shop", ShopSettings::shopNote, ShopSettings::withShopNote);
        Sheets.line(form, "Shop", new EntryField(name));
        Sheets.line(form, "Note", new EntryField(note));
        save.setDefaultButton(false);
        save.setOnAction(event -> chooseAndSave());
        save.disableProperty().bind(model.pages().isNull());
        ComboBox<String> printers = new ComboBox<>(model.printers());
        printers.setAccessibleText("printer");
        printers.setPromptText("No printer found");
        printers.setMaxWidth(Double.MAX_VALUE);
        model.printers().addListener((javafx.collections.ListChangeListener<String>) change -> {
            if (!model.printers().isEmpty()) {
                printers.setValue(model.printers().get(0));
            }
        });
        Button print = new Button("Print");
        print.setOnAction(event -> model.print(printers.getValue()));
        print.disableProperty().bind(printers.valueProperty().isNull().or(model.pages().isNull()));
        Label state = Sheets.hint("");
        state.textProperty().bind(model.state());
        VBox side = new VBox(3 * Sheets.STEP, Sheets.pageHead(PlaceKey.PRINT), form, new HBox(Sheets.STEP, save),
                new VBox(Sheets.STEP, printers, print), state,
                Sheets.hint("Where hands hurt never stands on the work order."));
        ((Label) ((HBox) side.getChildren().get(0)).getChildren().get(1)).setVisible(false);
        side.setPadding(new Insets(3 * Sheets.STEP, 3 * Sheets.STEP, 3 * Sheets.STEP, 4 * Sheets.STEP));
        side.setPrefWidth(SIDE_WIDTH);
        side.setMinWidth(SIDE_WIDTH);
        return side;
    }

    private void show(PrintViewModel.Pages made) {
        pages.getChildren().clear();
        if (made == null) {
            return;
        }
        double at = scroll.getVvalue();
        made.pages().forEach(page -> {
            ImageView image = new ImageView(SwingFXUtils.toFXImage(page, null));
            image.setPreserveRatio(true);
            image.setSmooth(true);
            image.fitWidthProperty().bind(Bindings.createDoubleBinding(() -> fitting(page.getWidth()),
                    scroll.viewportBoundsProperty()));
            StackPane sheet = new StackPane(image);
            sheet.setMaxWidth(StackPane.USE_PREF_SIZE);
            sheet.getStyleClass().add("gw-paper");
            pages.getChildren().add(sheet);
        });
        scroll.setVvalue(at);
    }

    /** As wide as the page is, and never wider than there is room for it. */
    private double fitting(double pageWidth) {
        double room = scroll.getViewportBounds().getWidth() - 7 * Sheets.STEP;
        return room < Sheets.STEP ? pageWidth : Math.min(pageWidth, room);
    }

    private void chooseAndSave() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Save the summary");
        chooser.setInitialFileName(model.suggestedName());
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("PDF", "*.pdf"));
        File file = chooser.showSaveDialog(root.getScene().getWindow());
        if (file != null) {
            model.save(file.toPath());
        }
    }

    @Override
    public PlaceKey key() {
        return PlaceKey.PRINT;
    }

    @Override
    public Node node() {
        return root;
    }

    @Override
    public void entered() {
        model.setShown(true);
        save.requestFocus();
    }

    @Override
    public void left() {
        model.setShown(false);
    }
}

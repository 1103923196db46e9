package gripwright.desktop;

import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Workbench;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;

/** The head of the window: whose session it is, which test is in view, whether it is invented, and the session's menu. */
final class Header extends HBox {

    private static final PseudoClass HERE = PseudoClass.getPseudoClass("here");

    private final Workbench workbench;
    private final HBox tests = new HBox();

    Header(Workbench workbench, WindowViewModel model, MenuButton sessionMenu, Runnable showKeys) {
        this.workbench = workbench;
        getStyleClass().add("gw-header");
        setAlignment(Pos.CENTER_LEFT);
        Label player = new Label();
        player.getStyleClass().add("gw-header-player");
        player.textProperty().bind(model.player());
        Label hand = Sheets.quiet("");
        hand.textProperty().bind(model.hand());
        hand.setMinWidth(USE_PREF_SIZE);
        Label day = Sheets.quiet("");
        day.textProperty().bind(model.day());
        day.setMinWidth(USE_PREF_SIZE);
        tests.getStyleClass().add("gw-header-tests");
        tests.setMinWidth(USE_PREF_SIZE);
        model.tests().subscribe(choices -> showTests(choices));
        model.testInView().subscribe(this::mark);
        getChildren().addAll(player, hand, day, tests, inventedSign(model), Sheets.spring(), sessionMenu, look(model),
                keys(showKeys));
    }

    private static Label inventedSign(WindowViewModel model) {
        Label sign = new Label("Invented demo data");
        sign.getStyleClass().add("gw-invented");
        sign.setId("invented-sign");
        sign.setMinWidth(USE_PREF_SIZE);
        sign.visibleProperty().bind(model.invented());
        sign.managedProperty().bind(sign.visibleProperty());
        return sign;
    }

    private Button look(WindowViewModel model) {
        Button look = new Button();
        look.getStyleClass().add("flat");
        look.setId("look");
        look.setMinWidth(USE_PREF_SIZE);
        look.textProperty().bind(model.lookOffered());
        look.setTooltip(new Tooltip("The light look for bright bays and projectors, the dark one for dim rooms"));
        look.setOnAction(event -> workbench.switchLook());
        return look;
    }

    private static Button keys(Runnable showKeys) {
        Button keys = new Button("?");
        keys.getStyleClass().add("flat");
        keys.setId("show-keys");
        keys.setMinWidth(USE_PREF_SIZE);
        keys.setAccessibleText("All keys");
        keys.setTooltip(new Tooltip("All keys (? or F1)"));
        keys.setOnAction(event -> showKeys.run());
        return keys;
    }

    private void showTests(List<WindowViewModel.TestChoice> choices) {
        tests.getChildren().setAll(choices.stream().map(this::testButton).toList());
        mark(workbench.test().get().id());
    }

    private Button testButton(WindowViewModel.TestChoice choice) {
        Button button = new Button(choice.name());
        button.getStyleClass().add("gw-test");
        button.setUserData(choice.id());
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText("Test club " + choice.name());
        button.setOnAction(event -> workbench.selectTest(choice.id()));
        return button;
    }

    private void mark(String testId) {
        tests.getChildren().forEach(button ->
                button.pseudoClassStateChanged(HERE, button.getUserData().equals(testId)));
    }
}

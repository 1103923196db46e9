package gripwright.desktop.balance;

import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.util.StringConverter;

/** A drop-down of the configurations of the test in view, bound both ways to the chosen one. */
final class ConfigurationBox extends ComboBox<Configuration> {

    private static final double WIDTH = 352;
    private static final double MOST_WIDTH = 440;

    private static final int LONGEST = 44;

    private boolean showing;

    ConfigurationBox(String name, Workbench workbench, ObjectProperty<Configuration> chosen) {
        setAccessibleText(name);
        setPrefWidth(WIDTH);
        setMaxWidth(MOST_WIDTH);
        setConverter(new StringConverter<>() {
            @Override
            public String toString(Configuration configuration) {
                return configuration == null ? "" : configuration.label() + "  " + configuration.grip().name();
            }

            @Override
            public Configuration fromString(String typed) {
                return null;
            }
        });
        setButtonCell(new ListCell<>() {
            @Override
            protected void updateItem(Configuration configuration, boolean empty) {
                super.updateItem(configuration, empty);
                setText(empty || configuration == null ? "" : shortened(getConverter().toString(configuration)));
            }
        });
        valueProperty().addListener((observed, before, now) -> {
            if (!showing && now != null) {
                chosen.set(now);
            }
        });
        workbench.test().subscribe(test -> show(test, chosen.get()));
        chosen.subscribe(now -> show(workbench.test().get(), now));
    }

    /** As much of a long name as the closed box holds; the open list has all of it. */
    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1).stripTrailing() + "\u2026";
    }

    private void show(ClubTest test, Configuration now) {
        showing = true;
        if (!getItems().equals(test.configurations())) {
            getItems().setAll(test.configurations());
        }
        setValue(now);
        showing = false;
    }
}

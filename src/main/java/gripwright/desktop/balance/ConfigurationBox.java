package gripwright.desktop.balance;

import gripwright.desktop.support.Workbench;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import javafx.beans.property.ObjectProperty;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** A drop-down of the configurations of the test in view, bound both ways to the chosen one. */
final class ConfigurationBox extends ComboBox<Configuration> {

    private static final double WIDTH = 280;
    private static final double MOST_WIDTH = 440;

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
        valueProperty().addListener((observed, before, now) -> {
            if (!showing && now != null) {
                chosen.set(now);
            }
        });
        workbench.test().subscribe(test -> show(test, chosen.get()));
        chosen.subscribe(now -> show(workbench.test().get(), now));
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

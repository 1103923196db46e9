package gripwright.desktop.take;

import gripwright.desktop.support.Sheets;
import gripwright.intake.ColumnMeaning;
import gripwright.intake.ColumnRole;
import gripwright.intake.FileColumn;
import gripwright.model.Metric;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.util.StringConverter;

/** The cells of one column of the file: its name and samples, what it holds, unit, side of plus, and the way back. */
final class ColumnCells {

    private static final List<ColumnMeaning> MEANINGS = meanings();
    private static final String IN_FILE = "as in the file";
    private static final int LONGEST = 52;
    private static final int ROOM_FOR_SAMPLES = 20;

    private final TakeViewModel model;
    private final Label name = label();
    private final Label samples = label("gw-quiet");
    private final ComboBox<ColumnMeaning> holds = combo(this::meaningWord);
    private final ComboBox<String> unit = combo(this::unitWord);
    private final Label onlyUnit = label("gw-quiet");
    private final ComboBox<String> side = combo(value -> value == null ? "" : "plus is " + value);
    private final Label reads = label();
    private final Button back = new Button("Take back");
    private FileColumn column;
    private boolean showing;

    ColumnCells(TakeViewModel model) {
        this.model = model;
        holds.getItems().add(null);
        holds.getItems().addAll(MEANINGS);
        holds.setVisibleRowCount(14);
        onlyUnit.setMaxWidth(Double.MAX_VALUE);
        onlyUnit.setPadding(new Insets(0, 0, 0, Sheets.STEP));
        on(holds, chosen -> model.setMeaning(column, chosen));
        on(unit, chosen -> model.setUnit(column, chosen));
        on(side, chosen -> model.setSide(column, chosen));
        back.getStyleClass().add("flat");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setTooltip(new Tooltip("The column is recognised as usual again"));
        back.setOnAction(event -> {
            holds.requestFocus();
            model.takeBack(column);
        });
    }

    private static List<ColumnMeaning> meanings() {
        return Stream.concat(Stream.of(Metric.values()).map(ColumnMeaning::of),
                Stream.of(ColumnRole.values()).filter(role -> role != ColumnRole.IGNORE).map(ColumnMeaning::of)).toList();
    }

    private static Label label(String... styles) {
        Label label = new Label();
        label.getStyleClass().add("take-word");
        label.getStyleClass().addAll(styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private static <T> ComboBox<T> combo(Function<T, String> text) {
        ComboBox<T> combo = new ComboBox<>();
        combo.setMaxWidth(Double.MAX_VALUE);
        combo.setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return text.apply(value);
            }

            @Override
            public T fromString(String typed) {
                return null;
            }
        });
        return combo;
    }

    private String meaningWord(ColumnMeaning value) {
        return value != null ? value.text() : column != null && column.open() ? "asked above" : "not read";
    }

    private String unitWord(String value) {
        return value != null && !value.isEmpty() ? value : column != null && column.open() ? "asked above" : IN_FILE;
    }

    private <T> void on(ComboBox<T> combo, Consumer<T> set) {
        combo.valueProperty().addListener((observed, before, chosen) -> {
            if (!showing) {
                set.accept(chosen);
            }
        });
    }

    Node[] nodes() {
        return new Node[] {name, samples, holds, new StackPane(onlyUnit, unit), side, reads, back};
    }

    void show(FileColumn now) {
        showing = true;
        boolean settled = column != null && column.open() && !now.open();
        column = now;
        if (settled) {
            // Nothing chosen is called otherwise now, and a field writes anew only what has changed.
            holds.setValue(MEANINGS.get(0));
            unit.setValue(null);
        }
        write(name, now.heading().isBlank() ? "#" + now.position() : now.heading());
        write(samples, samples(now));
        boolean read = now.isRead();
        mark(name, "take-unread", !read && !now.open());
        holds.setValue(read ? now.meaning() : null);
        holds.setAccessibleText("what the column " + now.name() + " holds");
        mark(holds, "take-open-field", now.open() && !read);
        offer(unit, read && now.meaning().units().size() > 1 ? choices(now) : List.of(), now.unit());
        mark(unit, "take-open-field", now.open() && read && now.unit().isEmpty());
        write(onlyUnit, read && now.meaning().units().size() == 1 ? now.meaning().units().get(0) : "");
        unit.setAccessibleText("unit of the column " + now.name());
        offer(side, read ? now.meaning().sides() : List.of(), now.side().isEmpty() ? null : now.side());
        side.setAccessibleText("what plus means in the column " + now.name());
        write(reads, now.open() ? "" : model.firstReading(now));
        back.setVisible(model.rule(now).isPresent());
        back.setAccessibleText("Take back what was said about " + now.name());
        showing = false;
    }

    private static List<String> choices(FileColumn now) {
        List<String> choices = new ArrayList<>(List.of(""));
        choices.addAll(now.meaning().units());
        return choices;
    }

    private static void offer(ComboBox<String> combo, List<String> choices, String value) {
        if (!combo.getItems().equals(choices)) {
            combo.getItems().setAll(choices);
        }
        combo.setVisible(!choices.isEmpty());
        combo.setValue(value);
    }

    /** A heading as written, on two lines where it is long; one longer than that tells its whole in a tip. */
    private static void write(Label label, String text) {
        String line = text.replaceAll("\\s+", " ");
        boolean isLong = line.length() > LONGEST;
        label.setText(isLong ? line.substring(0, LONGEST - 1).strip() + "\u2026" : line);
        label.setTooltip(isLong ? new Tooltip(text) : null);
    }

    /** As many of the first cells as there is room for. */
    private static String samples(FileColumn column) {
        StringBuilder text = new StringBuilder();
        for (String sample : column.samples()) {
            if (!text.isEmpty() && text.length() + sample.length() > ROOM_FOR_SAMPLES) {
                break;
            }
            text.append(text.isEmpty() ? "" : " \u00B7 ").append(sample);
        }
        return text.toString();
    }

    private static void mark(Node node, String style, boolean on) {
        node.getStyleClass().remove(style);
        if (on) {
            node.getStyleClass().add(style);
        }
    }
}

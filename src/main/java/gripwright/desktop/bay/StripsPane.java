package gripwright.desktop.bay;

import gripwright.charts.Strip;
import gripwright.charts.StripPicture;
import gripwright.desktop.support.PictureCanvas;
import gripwright.desktop.support.Theme;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The strips: this stint against the reference, one a primary metric, with the verdict so far in words beside it. */
final class StripsPane extends VBox {

    private static final double LEAST_TEXT = 11;
    private static final double MOST_TEXT = 22;
    /** A strip of two rows is about this many letter heights high. */
    private static final double LETTERS_HIGH = 8.5;
    /** Above its rows a strip has a head of about this many letter heights; the words stand beside the rows. */
    private static final double HEAD_LETTERS = 2.6;

    private final List<Row> rows = new ArrayList<>();
    private final Label empty = BayLabels.label(BayLabels.MIDDLE, BayLabels.QUIET);
    private boolean dark;
    private double textSize;
    private double scale = 1;

    StripsPane() {
        getStyleClass().add("bay-strips");
        setId("bay-strips");
        empty.setWrapText(true);
        empty.setText("Strips grow here, shot by shot, once the first scored shot is in.");
        getChildren().add(empty);
        setMinHeight(0);
        heightProperty().addListener((observed, before, now) -> fit());
    }

    void show(List<BayStrip> strips) {
        if (rows.size() != strips.size()) {
            rows.clear();
            strips.forEach(strip -> rows.add(new Row(rows.size())));
            getChildren().setAll(rows);
            if (rows.isEmpty()) {
                getChildren().setAll(empty);
            }
            fit();
        }
        for (int n = 0; n < strips.size(); n++) {
            rows.get(n).show(strips.get(n));
        }
    }

    void setDark(boolean darkNow) {
        dark = darkNow;
        rows.forEach(Row::look);
    }

    /** How much larger than usual letters may be. */
    void setScale(double larger) {
        scale = larger;
        fit();
    }

    /** Letters as large as the height allows, up to those that read from two metres. */
    private void fit() {
        double each = getHeight() / Math.max(1, rows.size());
        double size = Math.floor(Math.max(LEAST_TEXT, Math.min(MOST_TEXT * scale, each / LETTERS_HIGH)) * 2) / 2;
        if (size != textSize) {
            textSize = size;
            rows.forEach(Row::look);
        }
    }

    /** One strip and the words beside it. */
    private final class Row extends HBox {

        private final PictureCanvas picture = new PictureCanvas();
        private final Label verdict = BayLabels.label("bay-verdict");
        private final Label figures = BayLabels.label(BayLabels.SMALL, BayLabels.QUIET);
        private final VBox words;
        private BayStrip shown;

        private Row(int place) {
            super(16);
            verdict.setId("verdict-" + place);
            verdict.setWrapText(true);
            words = new VBox(verdict, figures);
            words.setAlignment(Pos.TOP_LEFT);
            words.getStyleClass().add("bay-words");
            HBox.setHgrow(picture, Priority.ALWAYS);
            VBox.setVgrow(this, Priority.ALWAYS);
            setMinHeight(0);
            getChildren().addAll(picture, words);
            look();
        }

        private void look() {
            double size = Math.max(LEAST_TEXT, textSize);
            picture.setLook(Theme.pictures(dark, size));
            words.setPadding(new Insets(Math.max(0, size * HEAD_LETTERS - 8), 0, 0, 0));
        }

        private void show(BayStrip strip) {
            if (strip.equals(shown)) {
                return;
            }
            if (shown == null || !strip.strip().equals(shown.strip())) {
                Strip drawn = strip.strip();
                picture.setPicture(new StripPicture(drawn));
                picture.setAccessibleText(drawn.title() + ": " + strip.verdict() + " " + strip.figures());
            }
            shown = strip;
            BayLabels.write(verdict, strip.verdict());
            BayLabels.write(figures, strip.figures());
        }
    }
}

package gripwright.desktop.bay;

import gripwright.planning.FairTest;
import gripwright.planning.WhatNext;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What to hit next and why, with the warnings of the fair test beside it. */
final class NextPane extends HBox {

    private final Label headline = BayLabels.whole(BayLabels.LARGE, BayLabels.STRONG);
    private final Label reason = BayLabels.label(BayLabels.MIDDLE, BayLabels.QUIET);
    private final Label warnings = BayLabels.label(BayLabels.SMALL);

    NextPane() {
        getStyleClass().add("bay-next");
        setId("bay-next");
        headline.setId("next-headline");
        warnings.setId("bay-warnings");
        reason.setWrapText(true);
        warnings.setWrapText(true);
        VBox words = new VBox(reason, warnings);
        words.setAlignment(Pos.CENTER_LEFT);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        getChildren().addAll(headline, words);
    }

    void show(WhatNext next, List<FairTest.Warning> fair) {
        BayLabels.write(headline, next.headline());
        BayLabels.write(reason, next.reason());
        String first = fair.isEmpty() ? "" : fair.get(0).sentence();
        String more = fair.size() > 1 ? "  (" + (fair.size() - 1) + " more)" : "";
        BayLabels.write(warnings, first + more);
        BayLabels.present(warnings, !fair.isEmpty());
        if (fair.size() > 1) {
            String all = String.join("\n", fair.stream().map(FairTest.Warning::sentence).toList());
            if (warnings.getTooltip() == null) {
                warnings.setTooltip(new javafx.scene.control.Tooltip());
            }
            warnings.getTooltip().setText(all);
        }
    }
}

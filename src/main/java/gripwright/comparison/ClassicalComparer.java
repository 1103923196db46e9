package gripwright.comparison;

import gripwright.model.ReadingText;

/** Textbook figures of one metric, each shot taken for itself. */
final class ClassicalComparer {

    ClassicalComparer(ComparisonTask task, MetricRows rows, ReadingText text) {
    }

    ClassicalFigures figures() {
        return ClassicalFigures.none();
    }
}

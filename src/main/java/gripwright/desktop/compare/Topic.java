package gripwright.desktop.compare;

import gripwright.desktop.support.Words;
import gripwright.model.Metric;

/**
 * Something that Compare can show: the standing overall, one metric in depth, or one of the other results.
 *
 * @param kind what is shown
 * @param metric the metric in depth; null for the other kinds
 * @param title on the list
 * @param primary whether the goal names it
 */
record Topic(Kind kind, Metric metric, String title, boolean primary) {

    /** What a topic shows. */
    enum Kind {
        OVERALL("Overall"),
        METRIC(""),
        PATTERNS("Shot patterns"),
        SPREAD("Spread"),
        SIZE("Response to size"),
        FEEL("Feel"),
        MISHITS("Mishits"),
        OTHERWISE("Read another way");

        private final String title;

        Kind(String title) {
            this.title = title;
        }
    }

    static Topic of(Kind kind) {
        return new Topic(kind, null, kind.title, false);
    }

    static Topic of(Metric metric, boolean primary) {
        return new Topic(Kind.METRIC, metric, Words.capitalised(metric.text()), primary);
    }

    /** Whether it is the same topic, whatever the goal says of it now. */
    boolean isSameAs(Topic other) {
        return other != null && kind == other.kind && metric == other.metric;
    }
}

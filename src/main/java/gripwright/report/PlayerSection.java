package gripwright.report;

import gripwright.charts.Look;
import gripwright.charts.MetricStrip;
import gripwright.charts.Pattern;
import gripwright.charts.PatternPicture;
import gripwright.charts.Picture;
import gripwright.charts.StripPicture;
import gripwright.charts.TestPattern;
import gripwright.comparison.Advice;
import gripwright.comparison.Comparison;
import gripwright.comparison.FeelFigures;
import gripwright.comparison.MetricComparison;
import gripwright.comparison.Standing;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.units.NumberText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The player's page: the advice, what got better, worse, what nobody can tell, the strips, the pattern, the feel. */
final class PlayerSection {

    private static final double SHARE_SHOWN = 0.8;
    private static final int STRIPS = 3;
    private static final FeelFigures NOT_ASKED = new FeelFigures(0, null, null, null, null, null, 0, 0, null);
    private static final double PATTERN_WIDTH = 0.52;
    private static final double PATTERN_HEIGHT = 0.26;

    private final Session session;
    private final ClubTest test;
    private final Comparison comparison;
    private final ShopSettings shop;
    private final ReadingText text;

    PlayerSection(Session session, ClubTest test, Comparison comparison, ShopSettings shop) {
        this.session = session;
        this.test = test;
        this.comparison = comparison;
        this.shop = shop;
        this.text = ReadingText.of(shop, session.player().hand());
    }

    Map<String, Object> content(PagePictures pictures, Look look, double width) {
        Map<String, Object> content = new LinkedHashMap<>();
        content.put("clubName", test.club().name());
        content.put("goal", session.goal().sentence());
        Advice advice = comparison.advice();
        AdviceWords words = AdviceWords.of(session, test, comparison);
        content.put("headline", words.headline());
        content.put("beside", words.beside());
        content.put("conflict", advice.conflict());
        content.put("odds", words.odds());
        content.put("against", advice.against());
        content.putAll(story(words));
        content.put("primaryPictures", strips().stream().map(p -> object(pictures, p, look, width)).toList());
        putPattern(content, pictures, look, width);
        content.put("hasTried", !test.configurations().isEmpty());
        content.put("hasFeel", comparison.overall().stream().anyMatch(PlayerSection::answered));
        content.put("tried", test.configurations().stream().map(this::tried).toList());
        content.put("next", next(advice));
        content.put("shopNote", shop.shopNote());
        return content;
    }

    private Map<String, Object> story(AdviceWords advice) {
        Map<String, Object> content = new LinkedHashMap<>();
        String reference = comparison.referenceId();
        String of = lookedAt(advice);
        if (reference == null || of == null) {
            content.put("storyEmpty", "There is nothing to compare yet.");
            return content;
        }
        PlayerStory story = PlayerStory.of(comparison, of, reference, shop);
        content.put("storyTitle", "Configuration " + story.of() + " against " + story.against());
        content.put("better", lines(story.better()));
        content.put("nothingShown", story.better().isEmpty() && story.worse().isEmpty());
        content.put("worse", lines(story.worse()));
        content.put("open", lines(primaryFirst(story.open())));
        content.put("same", lines(story.same()));
        content.put("hasSame", !story.same().isEmpty());
        return content;
    }

    /** The advised configuration, or, where that is the reference, the one that stands best among the others. */
    private String lookedAt(AdviceWords advice) {
        String reference = comparison.referenceId();
        if (advice.configurationId() != null && !advice.configurationId().equals(reference)) {
            return advice.configurationId();
        }
        return comparison.overall().stream()
                .filter(s -> !s.configurationId().equals(reference) && s.probabilityBest() != null)
                .max(java.util.Comparator.comparing(Standing::probabilityBest))
                .map(Standing::configurationId)
                .orElseGet(() -> test.configurations().stream().map(Configuration::id)
                        .filter(id -> !id.equals(reference)).findFirst().orElse(null));
    }

    private static List<StoryLine> primaryFirst(List<StoryLine> lines) {
        List<StoryLine> primary = lines.stream().filter(StoryLine::primary).toList();
        return primary.isEmpty() ? lines : primary;
    }

    private static List<Map<String, Object>> lines(List<StoryLine> lines) {
        List<Map<String, Object>> content = new ArrayList<>();
        for (StoryLine line : lines) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("what", line.what());
            row.put("words", line.words());
            row.put("amount", line.amount());
            row.put("chance", line.chance());
            content.add(row);
        }
        return content;
    }

    private List<StripPicture> strips() {
        MetricStrip strips = new MetricStrip(test, comparison, text, null);
        List<MetricComparison> shown = comparison.primaryMetrics();
        if (shown.isEmpty()) {
            shown = comparison.metrics().stream().filter(MetricComparison::isScored).limit(STRIPS).toList();
        }
        return StripPicture.stacked(shown.stream().map(strips::of).toList());
    }

    private static Map<String, Object> object(PagePictures pictures, Picture picture, Look look, double width) {
        return object(pictures, picture, width, picture.heightFor(width, look));
    }

    private static Map<String, Object> object(PagePictures pictures, Picture picture, double width, double height) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("name", pictures.add(picture));
        object.put("width", Math.round(width));
        object.put("height", Math.round(height));
        return object;
    }

    private void putPattern(Map<String, Object> content, PagePictures pictures, Look look, double width) {
        Pattern pattern = TestPattern.of(test, comparison, test.configurations(), SHARE_SHOWN, null, text, null)
                .withoutSetAside();
        if (pattern.groups().stream().allMatch(group -> group.points().isEmpty())) {
            return;
        }
        PatternPicture picture = new PatternPicture(pattern);
        Map<String, Object> object = object(pictures, picture, width * PATTERN_WIDTH,
                width * PATTERN_HEIGHT);
        boolean ellipses = pattern.groups().stream().anyMatch(group -> !group.ellipses().isEmpty());
        object.put("caption", ellipses ? "Each outline should hold eight of ten future shots with that grip."
                + (picture.cutsAnOutline() ? " The widest, from few shots, go off the picture." : "") : "");
        content.put("patternPicture", object);
    }

    private static boolean answered(Standing standing) {
        return standing.feel() != null && standing.feel().answers() > 0;
    }

    /** What the configuration is, and how it felt where the player said. */
    private Map<String, Object> tried(Configuration configuration) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("label", configuration.label());
        row.put("grip", ConfigurationTable.description(configuration));
        row.put("played", configuration.gamer() ? "played now" : "");
        FeelFigures feel = comparison.overall().stream().filter(PlayerSection::answered)
                .filter(standing -> standing.configurationId().equals(configuration.id())).findFirst()
                .map(Standing::feel).orElse(NOT_ASKED);
        NumberText numbers = NumberText.withDecimalMark(shop.decimalMark());
        row.put("comfort", mean(numbers, feel.comfort()));
        row.put("control", mean(numbers, feel.control()));
        row.put("confidence", mean(numbers, feel.confidence()));
        row.put("head", FeelWords.side(feel.headWeight(), "too light", "too heavy"));
        row.put("size", FeelWords.side(feel.size(), "too thin", "too thick"));
        row.put("wouldPlay", FeelWords.wouldPlay(feel));
        row.put("word", FeelWords.words(test, configuration.id()));
        return row;
    }

    private static String mean(NumberText numbers, Double value) {
        return value == null ? "\u2013" : numbers.format(value, value == Math.rint(value) ? 0 : 1);
    }

    private String next(Advice advice) {
        boolean carry = comparison.metric(Metric.CARRY).isPresent();
        if (advice.label() == null) {
            return "Hit some shots with each configuration, and the gamer again at the end.";
        }
        if (advice.keepsGamer()) {
            return "Keep what you play. If a question stays open, more shots in a mirrored order settle it better than "
                    + "more shots in one go.";
        }
        return "Regrip two clubs first and play them for two weeks; if " + (carry ? "flight and feel" : "feel")
                + " still say so, do the set. Write down the date: grips wear, and a worn grip is a thinner one.";
    }
}

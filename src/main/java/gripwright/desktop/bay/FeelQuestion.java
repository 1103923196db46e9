package gripwright.desktop.bay;

import gripwright.model.Feel;
import gripwright.model.Feel.WouldPlay;
import java.util.List;
import java.util.stream.IntStream;

/** A question at the end of a stint that is answered by one of a few buttons, numbered from 1. */
public enum FeelQuestion {
    COMFORT("comfort", "poor", "perfect"),
    CONTROL("control", "none", "full"),
    CONFIDENCE("confidence", "none", "full"),
    HEAD_WEIGHT("head", "too light", "too heavy"),
    SIZE("size", "too thin", "too thick"),
    WOULD_PLAY("would you play it?", "", "");

    private static final int STEPS = 7;
    private static final int MIDDLE = 4;
    private static final List<WouldPlay> WOULD_PLAY_ANSWERS = List.of(WouldPlay.YES, WouldPlay.UNSURE, WouldPlay.NO);

    private final String text;
    private final String lowWord;
    private final String highWord;

    FeelQuestion(String text, String lowWord, String highWord) {
        this.text = text;
        this.lowWord = lowWord;
        this.highWord = highWord;
    }

    /** As it is asked. */
    public String text() {
        return text;
    }

    /** What the first answer means; empty where the answers speak for themselves. */
    public String lowWord() {
        return lowWord;
    }

    /** What the last answer means. */
    public String highWord() {
        return highWord;
    }

    /** Whether the middle answer is 'right' and both ends are wrong. */
    public boolean isAboutRight() {
        return this == HEAD_WEIGHT || this == SIZE;
    }

    /** What stands on the buttons. */
    public List<String> answers() {
        if (this == WOULD_PLAY) {
            return List.of("yes", "unsure", "no");
        }
        return IntStream.rangeClosed(1, STEPS)
                .mapToObj(n -> isAboutRight() && n == MIDDLE ? "right" : String.valueOf(n)).toList();
    }

    /** The number of the button that was chosen, from 1; null where the question was skipped. */
    public Integer chosen(Feel feel) {
        return switch (this) {
            case COMFORT -> feel.comfort();
            case CONTROL -> feel.control();
            case CONFIDENCE -> feel.confidence();
            case HEAD_WEIGHT -> fromMiddle(feel.headWeight());
            case SIZE -> fromMiddle(feel.size());
            case WOULD_PLAY -> feel.wouldPlay() == null ? null : WOULD_PLAY_ANSWERS.indexOf(feel.wouldPlay()) + 1;
        };
    }

    /**
     * The feel with this question answered.
     *
     * @param button the number of a button, from 1; null to skip
     * @throws IllegalArgumentException for a number without a button
     */
    public Feel answered(Feel feel, Integer button) {
        if (button != null && (button < 1 || button > answers().size())) {
            throw new IllegalArgumentException("'" + text + "' has the answers 1 to " + answers().size() + ", not "
                    + button + ".");
        }
        return switch (this) {
            case COMFORT -> feel.withComfort(button);
            case CONTROL -> feel.withControl(button);
            case CONFIDENCE -> feel.withConfidence(button);
            case HEAD_WEIGHT -> feel.withHeadWeight(button == null ? null : button - MIDDLE);
            case SIZE -> feel.withSize(button == null ? null : button - MIDDLE);
            case WOULD_PLAY -> feel.withWouldPlay(button == null ? null : WOULD_PLAY_ANSWERS.get(button - 1));
        };
    }

    private static Integer fromMiddle(Integer step) {
        return step == null ? null : step + MIDDLE;
    }
}

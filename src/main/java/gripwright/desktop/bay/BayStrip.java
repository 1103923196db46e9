package gripwright.desktop.bay;

import gripwright.charts.Strip;

/**
 * One primary metric: this stint against the reference, with its verdict so far.
 *
 * @param strip the picture, without figures and words, which stand beside it in letters of their own
 * @param verdict the verdict so far in words; 'no verdict yet' before there is one
 * @param figures the difference in numbers; may be empty
 */
public record BayStrip(Strip strip, String verdict, String figures) {
}

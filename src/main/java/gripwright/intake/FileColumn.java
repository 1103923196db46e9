package gripwright.intake;

import java.util.List;

/**
 * One column of a file as people look at it: what is written in it, what it is read as, and what is open about it.
 *
 * @param position from 1
 * @param heading as written; may be empty
 * @param samples its first cells that say something
 * @param meaning what it holds; null where that is not known or still asked
 * @param unit symbol of its numbers' unit; empty where it has none, where the cells carry it, or while it is asked
 * @param side the word that a number without a minus means; empty where there is no sign or while that is asked
 * @param byHand whether the shop set it
 * @param open whether a question about it is open
 * @param key what a rule names it by: its heading, or its place ('#3') where that is blank or there twice
 */
public record FileColumn(int position, String heading, List<String> samples, ColumnMeaning meaning, String unit,
        String side, boolean byHand, boolean open, String key) {

    public FileColumn {
        samples = List.copyOf(samples);
    }

    /** Whether its cells go into the shots. */
    public boolean isRead() {
        return meaning != null && meaning.role() != ColumnRole.IGNORE;
    }

    /** How people find it: its heading, else its place. */
    public String name() {
        return heading.isBlank() ? "column " + position : heading;
    }
}

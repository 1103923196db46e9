package gripwright.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How the shop reads files of one source: what columns hold and the answers it gave, under a name of its choosing.
 *
 * @param name the shop's name for it
 * @param columns the columns set by hand; the others are recognised as usual
 * @param answers answers given once and for all
 */
public record ColumnMapping(String name, List<ColumnRule> columns, Answers answers) {

    /** Nothing set by hand. */
    public static ColumnMapping none() {
        return new ColumnMapping("as recognised", List.of(), Answers.none());
    }

    public ColumnMapping {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("Give the column mapping a name.");
        }
        columns = List.copyOf(columns);
        answers = answers == null ? Answers.none() : answers;
        Set<String> headings = new HashSet<>();
        for (ColumnRule rule : columns) {
            if (!headings.add(HeaderText.key(rule.heading()))) {
                throw new IllegalArgumentException("The column '" + rule.heading() + "' is set twice in the mapping '"
                        + name + "'; keep one.");
            }
        }
    }

    /** This mapping with one more column set, in place of an earlier rule for it. */
    public ColumnMapping with(ColumnRule rule) {
        List<ColumnRule> more = new ArrayList<>(columns);
        more.removeIf(other -> HeaderText.key(other.heading()).equals(HeaderText.key(rule.heading())));
        more.add(rule);
        return new ColumnMapping(name, more, answers);
    }

    public ColumnMapping with(Answers answers) {
        return new ColumnMapping(name, columns, answers);
    }

    public ColumnMapping withName(String name) {
        return new ColumnMapping(name, columns, answers);
    }

    /** The rule for a column; null where none was set. */
    ColumnRule ruleFor(String heading, int position) {
        String key = HeaderText.key(heading);
        String place = "#" + (position + 1);
        for (ColumnRule rule : columns) {
            if (rule.heading().strip().equals(place) || !key.isEmpty() && HeaderText.key(rule.heading()).equals(key)) {
                return rule;
            }
        }
        return null;
    }
}

package gripwright.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How the shop reads files of one source: what columns hold and the answers it gave, under a name of its choosing.
 *
 * @param name the shop's name for it
 * @param columns the columns set by hand; the others are recognised as usual
 * @param answers answers given once and for all
 * @param headings the headings of the file it was set on, by which the next file of its kind is known; may be empty
 * @param files the names of files it is for, with '*' for any letters ('bay two *.csv'); empty for none in particular
 */
public record ColumnMapping(String name, List<ColumnRule> columns, Answers answers, List<String> headings,
        String files) {

    private static final String UNNAMED = "as recognised";

    /** By what a mapping and a file belong together, the surest first. */
    public enum Fit {
        /** The file's name is one of those the shop set it for. */
        FILE_NAME,
        /** The file has the very headings the mapping was set on. */
        HEADINGS,
        /** Nothing says that they belong together. */
        NONE
    }

    /** Nothing set by hand. */
    public static ColumnMapping none() {
        return new ColumnMapping(UNNAMED, List.of(), Answers.none());
    }

    /** A mapping that is not known again by a file. */
    public ColumnMapping(String name, List<ColumnRule> columns, Answers answers) {
        this(name, columns, answers, List.of(), "");
    }

    public ColumnMapping {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("Give the column mapping a name.");
        }
        columns = List.copyOf(columns);
        answers = answers == null ? Answers.none() : answers;
        headings = headings == null ? List.of() : List.copyOf(headings);
        files = files == null ? "" : files.strip();
        Set<String> ruled = new HashSet<>();
        for (ColumnRule rule : columns) {
            if (!ruled.add(HeaderText.key(rule.heading()))) {
                throw new IllegalArgumentException("The column '" + rule.heading() + "' is set twice in the mapping '"
                        + name + "'; keep one.");
            }
        }
    }

    /** This mapping with one more column set, in place of an earlier rule for it. */
    public ColumnMapping with(ColumnRule rule) {
        List<ColumnRule> more = without(rule.heading()).columns.stream().collect(Collectors.toCollection(ArrayList::new));
        more.add(rule);
        return new ColumnMapping(name, more, answers, headings, files);
    }

    /** This mapping without the rule for a column, which is recognised as usual again. */
    public ColumnMapping without(String heading) {
        String key = HeaderText.key(heading);
        return new ColumnMapping(name, columns.stream().filter(rule -> !HeaderText.key(rule.heading()).equals(key))
                .toList(), answers, headings, files);
    }

    public ColumnMapping with(Answers answers) {
        return new ColumnMapping(name, columns, answers, headings, files);
    }

    public ColumnMapping withName(String name) {
        return new ColumnMapping(name, columns, answers, headings, files);
    }

    /** With the files it is known again by: their headings, and a pattern of their names that may be empty. */
    public ColumnMapping withFiles(List<String> headings, String files) {
        return new ColumnMapping(name, columns, answers, headings, files);
    }

    /** Whether it is one that the shop has named, and not what is recognised by itself. */
    public boolean isNamed() {
        return !name.equals(UNNAMED);
    }

    /**
     * By what a file and this mapping belong together.
     *
     * @param fileName the file's name without its folder
     * @param fileHeadings the file's headings; order, letter case and punctuation don't matter
     */
    public Fit fit(String fileName, List<String> fileHeadings) {
        if (!files.isEmpty() && pattern(files).matcher(fileName).matches()) {
            return Fit.FILE_NAME;
        }
        Set<String> mine = keys(headings);
        return !mine.isEmpty() && mine.equals(keys(fileHeadings)) ? Fit.HEADINGS : Fit.NONE;
    }

    private static Set<String> keys(List<String> headings) {
        return headings.stream().map(HeaderText::key).filter(key -> !key.isEmpty()).collect(Collectors.toSet());
    }

    private static Pattern pattern(String files) {
        StringBuilder expression = new StringBuilder();
        for (char c : files.toLowerCase(Locale.ROOT).toCharArray()) {
            expression.append(c == '*' ? ".*" : c == '?' ? "." : Pattern.quote(String.valueOf(c)));
        }
        return Pattern.compile(expression.toString(),
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.DOTALL);
    }

    /** Whether a column is set by its place, so that a file without headings can be read. */
    boolean namesPlaces() {
        return columns.stream().anyMatch(ColumnRule::isForPlace);
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

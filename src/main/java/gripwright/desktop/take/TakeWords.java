package gripwright.desktop.take;

import gripwright.intake.ColumnMapping;
import gripwright.intake.Dialect;
import gripwright.intake.IntakeResult;
import gripwright.intake.SkippedLine;
import gripwright.model.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the sheet says about a file, in sentences. */
final class TakeWords {

    private TakeWords() {
    }

    /** How the file is written: marks, encoding, and what stands around the shots. */
    static String dialect(IntakeResult result) {
        Dialect dialect = result.dialect();
        if (dialect == null) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        parts.add(switch (dialect.delimiter()) {
            case ';' -> "Semicolons between cells";
            case '\t' -> "Tabs between cells";
            default -> "Commas between cells";
        });
        if (dialect.decimalMark() != null) {
            parts.add(dialect.decimalMark() == ',' ? "decimal comma" : "decimal point");
        }
        if (!"text".equals(dialect.encoding())) {
            parts.add(dialect.encoding());
        }
        parts.add(line(result, SkippedLine.Reason.HEADER).map(line -> "headings on line " + line)
                .orElse("no headings, columns go by their place"));
        line(result, SkippedLine.Reason.UNITS).ifPresent(line -> parts.add("units on line " + line));
        counted(result, SkippedLine.Reason.TITLE, "title line").ifPresent(parts::add);
        counted(result, SkippedLine.Reason.SUMMARY, "summary line").ifPresent(parts::add);
        return String.join(", ", parts) + ".";
    }

    private static Optional<Integer> line(IntakeResult result, SkippedLine.Reason reason) {
        return result.skippedLines().stream().filter(line -> line.reason() == reason).map(SkippedLine::line).findFirst();
    }

    private static Optional<String> counted(IntakeResult result, SkippedLine.Reason reason, String one) {
        long count = result.skippedLines().stream().filter(line -> line.reason() == reason).count();
        return count == 0 ? Optional.empty() : Optional.of(counted(count, one) + " passed over");
    }

    /** Which mapping a file is read with, and why. */
    static String mapping(ColumnMapping mapping, FirstLook look) {
        if (!look.problem().isEmpty()) {
            return look.problem();
        }
        if (!mapping.isNamed()) {
            return mapping.columns().isEmpty() ? "Columns are read as recognised." : "Columns set by hand, for this file only.";
        }
        boolean fits = look.fitting().stream().anyMatch(each -> each.name().equals(mapping.name()));
        String why = !fits ? "chosen for this file" : look.fit() == ColumnMapping.Fit.FILE_NAME
                ? "since the file\u2019s name is one of \u2018" + mapping.files() + "\u2019"
                : "since the headings are those it was kept with";
        return "Read with the shop\u2019s mapping \u2018" + mapping.name() + "\u2019, " + why + ".";
    }

    /** What can be taken, and what is there already. */
    static String outcome(IntakeResult result) {
        if (result.cancelled()) {
            return "Broken off; nothing was taken.";
        }
        if (result.hasFailed()) {
            return result.problems().get(0).sentence();
        }
        if (result.rows().isEmpty() && result.alreadyTaken() > 0) {
            return "All " + counted(result.alreadyTaken(), "shot") + " of it are in the session already: taking it again "
                    + "adds nothing.";
        }
        StringBuilder text = new StringBuilder(counted(result.rows().size(), "new shot"));
        if (result.alreadyTaken() > 0) {
            text.append("; ").append(result.alreadyTaken()).append(" taken before");
        }
        long rejected = rejected(result.problems());
        if (rejected > 0) {
            text.append("; ").append(rejected == 1 ? "1 cell or line left out" : rejected + " cells or lines left out");
        }
        return text.append('.').toString();
    }

    static long rejected(List<Problem> problems) {
        return problems.stream().filter(problem -> problem.severity() == Problem.Severity.REJECTED).count();
    }

    static String counted(long count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }
}

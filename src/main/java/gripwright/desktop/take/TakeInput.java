package gripwright.desktop.take;

import gripwright.intake.CsvIntake;
import gripwright.intake.IntakeResult;
import gripwright.model.Shot;
import gripwright.model.ShotSource;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;

/**
 * What the sheet looks at: a file, or rows that were pasted; read away from the window's thread.
 *
 * @param file the file; null for pasted rows
 * @param rows the pasted text; null for a file
 */
record TakeInput(Path file, String rows) {

    private static final String PASTED = "pasted rows";

    static TakeInput of(Path file) {
        return new TakeInput(file, null);
    }

    static TakeInput ofRows(String rows) {
        return new TakeInput(null, rows);
    }

    /** The file's name, or that rows were pasted. */
    String name() {
        return file == null ? PASTED : String.valueOf(file.getFileName());
    }

    /** The headings; empty where there are none or the file can't be read, which reading it then says. */
    List<String> headings() {
        try {
            return file == null ? CsvIntake.headings(rows) : CsvIntake.headings(file);
        } catch (IOException saidByTheReading) {
            return List.of();
        }
    }

    IntakeResult read(CsvIntake intake, Collection<Shot> taken) {
        return file == null ? intake.with(ShotSource.Kind.PASTE).readText(rows, PASTED, taken)
                : intake.read(file, taken);
    }
}

package gripwright.desktop.take;

import gripwright.intake.ColumnMapping;
import java.util.List;

/**
 * What is found out about a file before it is read: which of the shop's mappings belong to it.
 *
 * @param headings the file's headings
 * @param saved all mappings the shop has saved
 * @param fitting those that belong to the file, by its name or else by its headings
 * @param fit by what they belong to it
 * @param problem why the shop's mappings can't be read; empty when they could
 */
record FirstLook(List<String> headings, List<ColumnMapping> saved, List<ColumnMapping> fitting, ColumnMapping.Fit fit,
        String problem) {

    static FirstLook nothing() {
        return new FirstLook(List.of(), List.of(), List.of(), ColumnMapping.Fit.NONE, "");
    }

    static FirstLook of(TakeInput input, List<ColumnMapping> saved, String problem) {
        List<String> headings = input.headings();
        for (ColumnMapping.Fit fit : List.of(ColumnMapping.Fit.FILE_NAME, ColumnMapping.Fit.HEADINGS)) {
            List<ColumnMapping> fitting = saved.stream()
                    .filter(mapping -> mapping.fit(input.name(), headings) == fit).toList();
            if (!fitting.isEmpty()) {
                return new FirstLook(headings, saved, fitting, fit, problem);
            }
        }
        return new FirstLook(headings, saved, List.of(), ColumnMapping.Fit.NONE, problem);
    }

    FirstLook withSaved(List<ColumnMapping> now) {
        return new FirstLook(headings, now, fitting, fit, problem);
    }

    /** The one to read the file with at once: the only one that belongs to it, else none. */
    ColumnMapping first() {
        return fitting.size() == 1 ? fitting.get(0) : ColumnMapping.none();
    }
}

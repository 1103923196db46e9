package gripwright.comparison;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Finds NaN in a result, however deep: none may ever reach a screen. */
final class NoNanAnywhere {

    private NoNanAnywhere() {
    }

    /** The places of every NaN. */
    static List<String> places(Object result) {
        List<String> found = new ArrayList<>();
        visit(result, result.getClass().getSimpleName(), found);
        return found;
    }

    private static void visit(Object value, String place, List<String> found) {
        if (value instanceof Double number && number.isNaN()) {
            found.add(place);
        } else if (value instanceof String text && (text.contains("NaN") || text.contains("null"))) {
            found.add(place + ": " + text);
        } else if (value instanceof Collection<?> many) {
            int index = 0;
            for (Object one : many) {
                visit(one, place + "[" + index++ + "]", found);
            }
        } else if (value instanceof ClassicalFigures figures) {
            for (Object part : new Object[] {figures.anova(), figures.welchAnova(), figures.brownForsythe(),
                figures.welch(), figures.tukeyKramer(), figures.gamesHowell(), figures.reml()}) {
                visit(part, place, found);
            }
        } else if (value instanceof Record) {
            for (RecordComponent component : value.getClass().getRecordComponents()) {
                try {
                    visit(component.getAccessor().invoke(value), place + "." + component.getName(), found);
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(e);
                }
            }
        }
    }
}

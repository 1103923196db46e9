package gripwright.app;

import gripwright.comparison.Estimate;
import gripwright.comparison.Interval;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Small builders for trees that become JSON; what can't be known is null, never a zero. */
final class JsonTree {

    private JsonTree() {
    }

    /** A finite number, else null. */
    static Double number(Double value) {
        return value == null || !Double.isFinite(value) ? null : value;
    }

    /** {@code [low, high]}, an unbounded end as null; null where there is no interval. */
    static List<Double> interval(Interval interval) {
        return interval == null ? null : Arrays.asList(number(interval.low()), number(interval.high()));
    }

    /** {@code {value, interval}}; null where there is no estimate. */
    static Map<String, Object> estimate(Estimate estimate) {
        if (estimate == null) {
            return null;
        }
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("value", number(estimate.value()));
        tree.put("interval", interval(estimate.interval()));
        return tree;
    }

    static <T> List<Object> list(List<T> values, Function<T, Object> each) {
        List<Object> list = new ArrayList<>();
        values.forEach(value -> list.add(each.apply(value)));
        return list;
    }
}

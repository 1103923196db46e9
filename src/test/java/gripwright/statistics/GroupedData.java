package gripwright.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** A reference data set read from its file: values in one column, labels of groups in another. */
record GroupedData(List<String> labels, double[][] groups) {

    static GroupedData read(String file, String valueColumn, String groupColumn) {
        String[] labels = column(file, groupColumn);
        double[] values = numbers(file, valueColumn);
        List<String> distinct = Arrays.stream(labels).distinct().toList();
        double[][] groups = distinct.stream().map(label -> IntStream.range(0, values.length)
            .filter(i -> labels[i].equals(label)).mapToDouble(i -> values[i]).toArray()).toArray(double[][]::new);
        return new GroupedData(distinct, groups);
    }

    static String[] column(String file, String name) {
        List<String> lines = ClassicalReference.lines("data/" + file);
        int place = Arrays.asList(lines.get(0).split(",")).indexOf(name);
        return lines.stream().skip(1).map(line -> line.split(",")[place]).toArray(String[]::new);
    }

    static double[] numbers(String file, String name) {
        return Arrays.stream(column(file, name)).mapToDouble(Double::parseDouble).toArray();
    }

    double[] group(String label) {
        return groups[labels.indexOf(label)];
    }
}

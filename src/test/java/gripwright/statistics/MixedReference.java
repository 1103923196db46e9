package gripwright.statistics;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The published data sets and reference values that the mixed model is checked against; see reference/MIXED-PROVENANCE.md. */
final class MixedReference {

    /** One data set as the model takes it. Group and block numbers are in order of first appearance. */
    record Sample(double[] response, int[] group, double[] covariate, int[] block, List<String> groupNames) {
        double meanCovariate() {
            double sum = 0;
            for (double value : covariate) {
                sum += value;
            }
            return sum / covariate.length;
        }
    }

    private static final String FOLDER = "/gripwright/statistics/reference/";

    private MixedReference() {
    }

    static Sample sample(String name) {
        return switch (name) {
            case "dyestuff" -> read("dyestuff.csv", "Yield", row -> "mean", null, row -> row.get("Batch"));
            case "dyestuff2" -> read("dyestuff2.csv", "Yield", row -> "mean", null, row -> row.get("Batch"));
            case "rail" -> read("rail.csv", "travel", row -> "mean", null, row -> row.get("Rail"));
            case "ergostool" -> read("ergostool.csv", "effort", row -> row.get("Type"), null, row -> row.get("Subject"));
            case "penicillin" ->
                read("penicillin.csv", "diameter", row -> row.get("sample"), null, row -> row.get("plate"));
            case "machines_worker" ->
                read("machines.csv", "score", row -> row.get("Machine"), null, row -> row.get("Worker"));
            case "machines_nested" -> read("machines.csv", "score", row -> row.get("Machine"), null,
                row -> row.get("Worker") + "/" + row.get("Machine"));
            case "cake_nested" -> read("cake.csv", "angle", row -> row.get("recipe"), "temp",
                row -> row.get("recipe") + "/" + row.get("replicate"));
            case "sleepstudy_days" ->
                read("sleepstudy.csv", "Reaction", row -> "mean", "Days", row -> row.get("Subject"));
            case "warpbreaks_nested" -> read("warpbreaks.csv", "breaks", row -> row.get("tension"), null,
                row -> row.get("wool") + "/" + row.get("tension"));
            default -> throw new IllegalArgumentException(name);
        };
    }

    static JsonNode json(String file) {
        try (InputStream in = MixedReference.class.getResourceAsStream(FOLDER + file)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Row {
        String get(String column);
    }

    private static Sample read(String file, String response, Function<Row, String> group, String covariate,
            Function<Row, String> block) {
        List<String[]> lines = lines(file);
        List<String> header = List.of(lines.remove(0));
        int n = lines.size();
        double[] y = new double[n];
        double[] t = covariate == null ? null : new double[n];
        int[] groups = new int[n];
        int[] blocks = new int[n];
        List<String> groupNames = new ArrayList<>();
        List<String> blockNames = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            String[] cells = lines.get(i);
            Row row = column -> cells[header.indexOf(column)];
            y[i] = Double.parseDouble(row.get(response));
            groups[i] = number(groupNames, group.apply(row));
            blocks[i] = number(blockNames, block.apply(row));
            if (t != null) {
                t[i] = Double.parseDouble(row.get(covariate));
            }
        }
        return new Sample(y, groups, t, blocks, groupNames);
    }

    private static int number(List<String> names, String name) {
        if (!names.contains(name)) {
            names.add(name);
        }
        return names.indexOf(name);
    }

    private static List<String[]> lines(String file) {
        InputStream in = MixedReference.class.getResourceAsStream(FOLDER + "data/" + file);
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<String[]> lines = new ArrayList<>();
            reader.lines().map(line -> line.split(",")).forEach(lines::add);
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package gripwright.app;

import gripwright.intake.Answers;
import gripwright.intake.ColumnMapping;
import gripwright.intake.ColumnRule;
import gripwright.model.Problem;
import gripwright.model.ProblemException;
import gripwright.storage.MappingsFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The shop's column mappings in their file: turned into plain trees for storage, and back. */
final class SavedMappings {

    private final Path file;

    SavedMappings(Path file) {
        this.file = file;
    }

    /** All of them, by name. */
    List<ColumnMapping> all() throws ProblemException {
        if (!Files.exists(file)) {
            return List.of();
        }
        List<ColumnMapping> mappings = new ArrayList<>();
        for (Map.Entry<String, Object> entry : new TreeMap<>(new MappingsFile().read(file).value()).entrySet()) {
            mappings.add(mapping(entry.getKey(), entry.getValue()));
        }
        return mappings;
    }

    /** The one with this name. */
    Optional<ColumnMapping> named(String name) throws ProblemException {
        return all().stream().filter(mapping -> mapping.name().equals(name)).findFirst();
    }

    /** Keeps one, in place of an earlier one of its name. */
    void keep(ColumnMapping mapping) throws ProblemException {
        Map<String, Object> trees = new LinkedHashMap<>();
        for (ColumnMapping each : all()) {
            trees.put(each.name(), tree(each));
        }
        trees.put(mapping.name(), tree(mapping));
        new MappingsFile().write(file, trees);
    }

    private static Map<String, Object> tree(ColumnMapping mapping) {
        List<Object> columns = new ArrayList<>();
        for (ColumnRule rule : mapping.columns()) {
            Map<String, Object> column = new LinkedHashMap<>();
            column.put("heading", rule.heading());
            column.put("meaning", rule.meaning());
            column.put("unit", rule.unit());
            column.put("flipped", rule.flipped());
            columns.add(column);
        }
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("columns", columns);
        tree.put("answers", new TreeMap<>(mapping.answers().choices()));
        return tree;
    }

    private ColumnMapping mapping(String name, Object saved) throws ProblemException {
        try {
            Map<?, ?> tree = (Map<?, ?>) saved;
            List<ColumnRule> rules = new ArrayList<>();
            for (Object each : (List<?>) tree.get("columns")) {
                Map<?, ?> column = (Map<?, ?>) each;
                rules.add(new ColumnRule((String) column.get("heading"), (String) column.get("meaning"),
                        (String) column.get("unit"), Boolean.TRUE.equals(column.get("flipped"))));
            }
            Answers answers = Answers.none();
            for (Map.Entry<?, ?> answer : ((Map<?, ?>) tree.get("answers")).entrySet()) {
                answers = answers.with((String) answer.getKey(), (String) answer.getValue());
            }
            return new ColumnMapping(name, rules, answers);
        } catch (ClassCastException | NullPointerException | IllegalArgumentException damaged) {
            throw new ProblemException(new Problem(Problem.Severity.FATAL, file.toString(), null, null, name,
                    "The column mapping '" + name + "' can't be read (" + damaged.getMessage()
                            + "); set its columns again and save it. Nothing was changed."), damaged);
        }
    }
}

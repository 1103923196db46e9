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
import java.util.Set;
import java.util.TreeMap;

/** The shop's column mappings in their file: turned into plain trees for storage, and back. */
final class SavedMappings {

    /** Answers about the player and not about the source: the next player's files must ask again. */
    private static final Set<String> OF_ONE_PLAYER = Set.of("hand", "rows:player");

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
        for (Map.Entry<String, Object> entry : new TreeMap<>(saved()).entrySet()) {
            mappings.add(mapping(entry.getKey(), entry.getValue()));
        }
        return mappings;
    }

    /** The one with this name. */
    Optional<ColumnMapping> named(String name) throws ProblemException {
        Object saved = trees().get(name);
        return saved == null ? Optional.empty() : Optional.of(mapping(name, saved));
    }

    /** Keeps one, in place of an earlier one of its name; the others stay as they are, even one that can't be read. */
    void keep(ColumnMapping mapping) throws ProblemException {
        Map<String, Object> trees = trees();
        trees.put(mapping.name(), tree(mapping));
        write(trees);
    }

    /** Forgets the one with this name; nothing happens where there is none. */
    void forget(String name) throws ProblemException {
        Map<String, Object> trees = trees();
        if (trees.remove(name) != null) {
            write(trees);
        }
    }

    private Map<String, Object> trees() throws ProblemException {
        return Files.exists(file) ? new LinkedHashMap<>(saved()) : new LinkedHashMap<>();
    }

    private static Map<String, Object> tree(ColumnMapping mapping) {
        List<Object> columns = new ArrayList<>();
        for (ColumnRule rule : mapping.columns()) {
            Map<String, Object> column = new LinkedHashMap<>();
            column.put("heading", rule.heading());
            column.put("meaning", rule.meaning());
            column.put("unit", rule.unit());
            column.put("flipped", rule.flipped());
            column.put("plus", rule.plus());
            columns.add(column);
        }
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("columns", columns);
        Map<String, String> answers = new TreeMap<>(mapping.answers().choices());
        answers.keySet().removeAll(OF_ONE_PLAYER);
        tree.put("answers", answers);
        tree.put("headings", new ArrayList<Object>(mapping.headings()));
        tree.put("files", mapping.files());
        return tree;
    }

    private ColumnMapping mapping(String name, Object saved) throws ProblemException {
        try {
            Map<?, ?> tree = (Map<?, ?>) saved;
            List<ColumnRule> rules = new ArrayList<>();
            for (Object each : (List<?>) tree.get("columns")) {
                Map<?, ?> column = (Map<?, ?>) each;
                rules.add(new ColumnRule((String) column.get("heading"), (String) column.get("meaning"),
                        (String) column.get("unit"), Boolean.TRUE.equals(column.get("flipped")),
                        (String) column.get("plus")));
            }
            Answers answers = Answers.none();
            for (Map.Entry<?, ?> answer : ((Map<?, ?>) tree.get("answers")).entrySet()) {
                if (!OF_ONE_PLAYER.contains(answer.getKey())) {
                    answers = answers.with((String) answer.getKey(), (String) answer.getValue());
                }
            }
            List<String> headings = new ArrayList<>();
            if (tree.get("headings") instanceof List<?> kept) {
                kept.forEach(heading -> headings.add((String) heading));
            }
            return new ColumnMapping(name, rules, answers, headings, (String) tree.get("files"));
        } catch (ClassCastException | NullPointerException | IllegalArgumentException damaged) {
            String reason = damaged instanceof IllegalArgumentException ? ": " + damaged.getMessage()
                    : ", since something in it is missing or of another kind.";
            throw new ProblemException(new Problem(Problem.Severity.FATAL, file.toString(), null, null, name,
                    "The column mapping '" + name + "' can't be read" + reason
                            + " Set its columns again and save it. Nothing was changed."), damaged);
        }
    }

    private Map<String, Object> saved() throws ProblemException {
        try {
            return new MappingsFile().read(file).value();
        } catch (ProblemException refused) {
            throw SessionInput.placed(refused, file);
        }
    }

    private void write(Map<String, Object> trees) throws ProblemException {
        try {
            new MappingsFile().write(file, trees);
        } catch (ProblemException refused) {
            throw SessionInput.placed(refused, file);
        }
    }
}

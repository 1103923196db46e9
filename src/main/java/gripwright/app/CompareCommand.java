package gripwright.app;

import gripwright.comparison.Comparer;
import gripwright.comparison.Comparison;
import gripwright.comparison.Sensitivity;
import gripwright.model.ClubTest;
import gripwright.model.Configuration;
import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.storage.JsonText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code gripwright compare}: what the shots of a session say about its configurations. */
@Command(name = "compare", mixinStandardHelpOptions = true,
        description = "Compares the configurations of a session, metric by metric.")
final class CompareCommand implements Callable<Integer> {

    private final Gripwright.Output output;

    @Parameters(index = "0", paramLabel = "SESSION.json", description = "the session")
    private Path file;

    @Option(names = "--json", description = "write JSON (docs/json.md)")
    private boolean json;

    @Option(names = "--reference", paramLabel = "LABEL", description = "the configuration to compare with")
    private String reference;

    @Option(names = "--sensitivity", description = "also read the session other ways: set-aside shots back in, "
            + "one stint left out, a more cautious prior")
    private boolean sensitivity;

    @Option(names = "--settings", paramLabel = "FILE", description = "the shop's settings; else the program's own")
    private Path settingsFile;

    CompareCommand(Gripwright.Output output) {
        this.output = output;
    }

    @Override
    public Integer call() throws ProblemException {
        SessionInput input = new SessionInput(output);
        Session session = input.session(file);
        ShopSettings shop = input.settings(settingsFile);
        Comparer comparer = Comparer.withSettings(shop);
        List<Comparison> comparisons = new ArrayList<>();
        List<Sensitivity> sensitivities = new ArrayList<>();
        for (ClubTest test : tests(session)) {
            String referenceId = reference == null ? null
                    : test.labelled(reference).map(Configuration::id).orElseThrow();
            comparisons.add(comparer.compare(session, test, referenceId));
            if (sensitivity) {
                sensitivities.add(comparer.sensitivity(session, test, referenceId));
            }
        }
        if (json) {
            Map<String, Object> tree = CompareJson.of(comparisons);
            if (sensitivity) {
                tree.put("sensitivity", CompareJson.sensitivities(sensitivities));
            }
            output.out().print(JsonText.write(tree));
        } else {
            CompareText text = new CompareText(session, shop);
            output.out().print(text.of(comparisons));
            sensitivities.forEach(each -> output.out().print(text.of(each)));
        }
        return 0;
    }

    /** The tests that have the reference asked for; all of them when none is. */
    private List<ClubTest> tests(Session session) {
        if (reference == null) {
            return session.tests();
        }
        List<ClubTest> having = session.tests().stream().filter(t -> t.labelled(reference).isPresent()).toList();
        if (having.isEmpty()) {
            String labels = session.tests().stream().flatMap(t -> t.configurations().stream())
                    .map(Configuration::label).distinct().collect(Collectors.joining(", "));
            throw new IllegalArgumentException("No configuration is labelled '" + reference + "'; there "
                    + (labels.isEmpty() ? "is none yet." : "are " + labels + "."));
        }
        return having;
    }
}

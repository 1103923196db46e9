package gripwright.app;

import gripwright.intake.demo.Demo;
import gripwright.intake.demo.DemoFiles;
import gripwright.model.ProblemException;
import gripwright.storage.SessionFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code gripwright demo-data}: makes the invented demo sessions anew, with their truth and their CSV files. */
@Command(name = "demo-data", mixinStandardHelpOptions = true,
        description = "Writes the invented demo sessions, their truth and their shots as CSV in three dialects.")
final class DemoDataCommand implements Callable<Integer> {

    private final Gripwright.Output output;

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "where the files go")
    private Path folder;

    DemoDataCommand(Gripwright.Output output) {
        this.output = output;
    }

    @Override
    public Integer call() throws IOException, ProblemException {
        Files.createDirectories(folder);
        for (Demo demo : List.of(Demo.leftHandedEightIron(), Demo.noDifference())) {
            Path session = folder.resolve(demo.name() + ".json");
            new SessionFile().write(session, demo.session());
            output.out().println(session);
            for (Map.Entry<String, byte[]> file : DemoFiles.of(demo).entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue());
                output.out().println(folder.resolve(file.getKey()));
            }
        }
        return 0;
    }
}

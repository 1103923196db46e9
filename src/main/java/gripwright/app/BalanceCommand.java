package gripwright.app;

import gripwright.model.ProblemException;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.storage.JsonText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code gripwright balance}: how each grip moves the balance of the club, and the whole set over the bench. */
@Command(name = "balance", mixinStandardHelpOptions = true,
        description = "Swingweight, balance point, mass and inertia of each configuration, and the plan of the set.")
final class BalanceCommand implements Callable<Integer> {

    private final Gripwright.Output output;

    @Parameters(index = "0", paramLabel = "SESSION.json", description = "the session")
    private Path file;

    @Option(names = "--json", description = "write JSON (docs/json.md)")
    private boolean json;

    @Option(names = "--settings", paramLabel = "FILE", description = "the shop's settings; else the program's own")
    private Path settingsFile;

    BalanceCommand(Gripwright.Output output) {
        this.output = output;
    }

    @Override
    public Integer call() throws ProblemException {
        SessionInput input = new SessionInput(output);
        Session session = input.session(file);
        ShopSettings shop = input.settings(settingsFile);
        Stock stock = input.stock();
        output.out().print(json ? JsonText.write(BalanceJson.of(session, shop, stock))
                : new BalanceText(shop).of(session, stock));
        return 0;
    }
}

package gripwright.storage;

import gripwright.model.ProblemException;
import gripwright.model.Stock;
import java.nio.file.Path;
import java.util.List;

/** Reads and writes the shop's stock list of grips and tapes. */
public final class StockFile {

    /** The format that is written. */
    public static final int FORMAT_VERSION = 1;

    private final DocumentFile<Stock> file;

    public StockFile() {
        this(new LocalDisk());
    }

    StockFile(DiskOperations disk) {
        this.file = new DocumentFile<>(new VersionedFormat<>("stock", FORMAT_VERSION, Stock.class, List.of()), disk);
    }

    /**
     * The stock list, empty where there is no file yet.
     *
     * @throws ProblemException with a sentence; the file is untouched
     */
    public Loaded<Stock> read(Path path) throws ProblemException {
        return file.readOr(path, new Stock(List.of(), List.of()));
    }

    /** Writes it in one step; on failure the old file stands. */
    public void write(Path path, Stock stock) throws ProblemException {
        file.write(path, stock);
    }
}

package gripwright.intake;

import gripwright.model.ShotSource;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;

/**
 * Makes short digests by which rows are known again.
 *
 * <p>The digest of a row is taken over its cells with their headings in sorted order: neither the order of the columns
 * nor what is later answered about them changes it.
 */
final class RowKeys {

    private static final int KEPT_BYTES = 12;

    private final MessageDigest digest = sha256();

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256.", impossible);
        }
    }

    String ofCells(CsvRow row, FileHeader header) {
        List<String> cells = new ArrayList<>(header.columns().size());
        for (Column column : header.columns()) {
            String cell = CellText.clean(row.cell(column.position()));
            if (!cell.isEmpty()) {
                cells.add(column.heading() + '\u001F' + cell);
            }
        }
        Collections.sort(cells);
        return hash(String.join("\u001E", cells));
    }

    String shotId(ShotSource source) {
        return "s-" + hash(String.join("\u001E", source.kind().name(), source.name(), source.shotId(), source.time(),
                source.rowKey(), String.valueOf(source.occurrence())));
    }

    private String hash(String text) {
        byte[] bytes = digest.digest(text.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(bytes, 0, KEPT_BYTES);
    }
}

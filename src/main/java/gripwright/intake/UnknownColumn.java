package gripwright.intake;

import java.util.List;

/**
 * A column that is not read, since its heading is no term that is known.
 *
 * @param position from 1
 * @param heading as written; may be empty
 * @param samples its first cells
 */
public record UnknownColumn(int position, String heading, List<String> samples) {

    public UnknownColumn {
        samples = List.copyOf(samples);
    }
}

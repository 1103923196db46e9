package gripwright.storage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Consumer;

/**
 * One step from a format version to the next.
 *
 * @param fromVersion the version it starts from; it ends at the next
 * @param change changes the whole document, header included, in place; the version is counted up for it
 */
record Migration(int fromVersion, Consumer<ObjectNode> change) {
}

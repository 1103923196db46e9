package gripwright.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gripwright.units.Swingweight;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The difference between two records as a few changes of their JSON trees, small when little changed.
 *
 * <p>A change names a place by its path of field names and indices and either sets it ({@code set}) or, in a list, takes
 * some elements out at an index and puts others in ({@code at}, {@code take}, {@code put}). Unchanged parts of immutable
 * records are shared, so finding the difference costs little more than walking the lists.
 */
final class TreeChanges {

    private static final String PATH = "path";
    private static final String SET = "set";
    private static final String AT = "at";
    private static final String TAKE = "take";
    private static final String PUT = "put";

    private final ObjectMapper mapper;

    TreeChanges(ObjectMapper mapper) {
        this.mapper = mapper;
    }

    /** The changes that lead from one record to another of the same class; empty for equal ones. */
    List<Map<String, Object>> between(Record before, Record after) {
        List<Map<String, Object>> changes = new ArrayList<>();
        compare(before, after, List.of(), changes);
        return changes;
    }

    /**
     * Applies changes to a tree, in place.
     *
     * @throws IllegalArgumentException when a change does not fit the tree
     */
    void apply(JsonNode tree, JsonNode changes) {
        for (JsonNode change : changes) {
            JsonNode path = change.path(PATH);
            if (change.has(SET)) {
                set(place(tree, path, path.size() - 1), path.path(path.size() - 1), change.get(SET));
            } else if (place(tree, path, path.size()) instanceof ArrayNode list) {
                splice(list, change);
            } else {
                throw new IllegalArgumentException("There is no list at " + path + ".");
            }
        }
    }

    private void compare(Object before, Object after, List<Object> path, List<Map<String, Object>> changes) {
        if (before == after) {
            return;
        }
        if (before instanceof Record && after instanceof Record && before.getClass() == after.getClass()
                && !(before instanceof Swingweight)) {
            for (RecordComponent component : before.getClass().getRecordComponents()) {
                compare(value(component, before), value(component, after), longer(path, component.getName()), changes);
            }
        } else if (before instanceof List<?> one && after instanceof List<?> other) {
            compareLists(one, other, path, changes);
        } else if (!Objects.equals(before, after)) {
            Map<String, Object> change = new LinkedHashMap<>();
            change.put(PATH, path);
            change.put(SET, after);
            changes.add(change);
        }
    }

    private void compareLists(List<?> before, List<?> after, List<Object> path, List<Map<String, Object>> changes) {
        int shorter = Math.min(before.size(), after.size());
        int head = 0;
        while (head < shorter && Objects.equals(before.get(head), after.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < shorter - head
                && Objects.equals(before.get(before.size() - 1 - tail), after.get(after.size() - 1 - tail))) {
            tail++;
        }
        int taken = before.size() - head - tail;
        List<?> put = after.subList(head, after.size() - tail);
        if (taken == put.size()) {
            for (int index = 0; index < taken; index++) {
                compare(before.get(head + index), put.get(index), longer(path, head + index), changes);
            }
        } else {
            Map<String, Object> change = new LinkedHashMap<>();
            change.put(PATH, path);
            change.put(AT, head);
            change.put(TAKE, taken);
            change.put(PUT, put);
            changes.add(change);
        }
    }

    private static Object value(RecordComponent component, Object of) {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("The component " + component.getName() + " can't be read.", e);
        }
    }

    private static List<Object> longer(List<Object> path, Object step) {
        List<Object> longer = new ArrayList<>(path);
        longer.add(step);
        return longer;
    }

    private static JsonNode place(JsonNode tree, JsonNode path, int steps) {
        JsonNode place = tree;
        for (int step = 0; step < steps; step++) {
            JsonNode name = path.get(step);
            JsonNode below = name.isInt() ? place.get(name.intValue()) : place.get(name.asText());
            if (below == null) {
                throw new IllegalArgumentException("There is no place " + path + ".");
            }
            place = below;
        }
        return place;
    }

    private static void set(JsonNode parent, JsonNode name, JsonNode value) {
        if (parent instanceof ObjectNode object && name.isTextual()) {
            object.set(name.asText(), value);
        } else if (parent instanceof ArrayNode list && name.isInt() && name.intValue() < list.size()) {
            list.set(name.intValue(), value);
        } else {
            throw new IllegalArgumentException("There is no place " + name + " to be set.");
        }
    }

    private static void splice(ArrayNode list, JsonNode change) {
        int at = change.path(AT).intValue();
        int take = change.path(TAKE).intValue();
        if (at < 0 || take < 0 || at + take > list.size()) {
            throw new IllegalArgumentException("The list has no elements " + at + " to " + (at + take) + ".");
        }
        for (int taken = 0; taken < take; taken++) {
            list.remove(at);
        }
        int index = at;
        for (JsonNode put : change.path(PUT)) {
            list.insert(index++, put);
        }
    }

    /** The tree of a record. */
    ObjectNode tree(Record record) {
        return mapper.valueToTree(record);
    }
}

package gripwright.desktop.support;

import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.session.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javafx.beans.value.ObservableValue;

/**
 * A record of the session or the shop that is looked at and edited: the session, the test in view, one configuration.
 *
 * <p>From it fields are made with a getter and a setter each: {@code Subject.session(workbench).part(Session::player,
 * Session::withPlayer).number("hand length", Quantity.LENGTH, Player::handLengthMm, Player::withHandLengthMm)}. Each commit
 * is one edit named 'Set' and the field's name.
 *
 * @param <R> the record
 */
public final class Subject<R> {

    private final Workbench workbench;
    private final ObservableValue<R> value;
    private final BiFunction<String, UnaryOperator<R>, Optional<String>> edit;

    private Subject(Workbench workbench, ObservableValue<R> value,
            BiFunction<String, UnaryOperator<R>, Optional<String>> edit) {
        this.workbench = workbench;
        this.value = value;
        this.edit = edit;
    }

    /** The session. */
    public static Subject<Session> session(Workbench workbench) {
        return new Subject<>(workbench, workbench.session(),
                (label, change) -> workbench.apply(new Edit(label, change)));
    }

    /** The test in view. */
    public static Subject<ClubTest> test(Workbench workbench) {
        return new Subject<>(workbench, workbench.test(), (label, change) -> {
            String id = workbench.test().get().id();
            return workbench.apply(new Edit(label,
                    session -> session.test(id).map(test -> session.withTest(change.apply(test))).orElse(session)));
        });
    }

    /** The shop's settings. */
    public static Subject<ShopSettings> settings(Workbench workbench) {
        return new Subject<>(workbench, workbench.settings(),
                (label, change) -> workbench.apply(ShopEdit.settings(label, change)));
    }

    /** The shop's stock list. */
    public static Subject<Stock> stock(Workbench workbench) {
        return new Subject<>(workbench, workbench.stock(),
                (label, change) -> workbench.apply(ShopEdit.stock(label, change)));
    }

    /** The record now; null where it is gone. */
    public R get() {
        return value.getValue();
    }

    public ObservableValue<R> value() {
        return value;
    }

    public Workbench workbench() {
        return workbench;
    }

    /** Applies a named edit to the record; gives back why it can't be, or empty. */
    public Optional<String> edit(String label, UnaryOperator<R> change) {
        return edit.apply(label, change);
    }

    /** Applies a named edit and, where it can't be, says why at the foot of the window. */
    public void editOrSay(String label, UnaryOperator<R> change) {
        edit(label, change).ifPresent(workbench::sayProblem);
    }

    /** A record inside this one; where the getter gives null there is nothing to edit. */
    public <P> Subject<P> part(Function<R, P> get, BiFunction<R, P, R> set) {
        return new Subject<>(workbench, value.map(get), (label, change) -> edit(label, whole -> {
            P part = get.apply(whole);
            return part == null ? whole : set.apply(whole, change.apply(part));
        }));
    }

    /** The record at a place (from 0) of a list inside this one; gone when the list is shorter. */
    public <P> Subject<P> element(int index, Function<R, List<P>> get, BiFunction<R, List<P>, R> set) {
        return part(whole -> index < get.apply(whole).size() ? get.apply(whole).get(index) : null, (whole, changed) -> {
            List<P> list = new ArrayList<>(get.apply(whole));
            list.set(index, changed);
            return set.apply(whole, list);
        });
    }

    /** A number that may be left blank for 'not measured'. */
    public NumberEntry number(String name, Quantity quantity, Function<R, Double> get, BiFunction<R, Double, R> set) {
        return number(name, quantity, NumberEntry.Blank.MEANS_NOT_MEASURED, get, set);
    }

    /** A number that must be there. */
    public NumberEntry needed(String name, Quantity quantity, Function<R, Double> get, BiFunction<R, Double, R> set) {
        return number(name, quantity, NumberEntry.Blank.IS_A_PROBLEM, get, set);
    }

    /** A whole number that must be there. */
    public NumberEntry count(String name, Function<R, Integer> get, BiFunction<R, Integer, R> set) {
        return whole(name, NumberEntry.Blank.IS_A_PROBLEM, get, set);
    }

    /** A whole number that may be left blank. */
    public NumberEntry optionalCount(String name, Function<R, Integer> get, BiFunction<R, Integer, R> set) {
        return whole(name, NumberEntry.Blank.MEANS_NOT_MEASURED, get, set);
    }

    private NumberEntry whole(String name, NumberEntry.Blank blank, Function<R, Integer> get,
            BiFunction<R, Integer, R> set) {
        return new NumberEntry(name, blank, value.map(record -> asDouble(get.apply(record))),
                workbench.style(Quantity.COUNT), typed -> {
                    if (typed != null && (typed != Math.rint(typed) || Math.abs(typed) > Integer.MAX_VALUE)) {
                        return Optional.of("The " + name + " is a whole number, such as 2.");
                    }
                    Integer count = typed == null ? null : (Integer) (int) typed.doubleValue();
                    return edit("Set " + name, record -> set.apply(record, count));
                });
    }

    private static Double asDouble(Integer count) {
        return count == null ? null : (Double) count.doubleValue();
    }

    private NumberEntry number(String name, Quantity quantity, NumberEntry.Blank blank, Function<R, Double> get,
            BiFunction<R, Double, R> set) {
        return new NumberEntry(name, blank, value.map(get), workbench.style(quantity),
                typed -> edit("Set " + name, record -> set.apply(record, typed)));
    }

    /** A text. */
    public TextEntry text(String name, Function<R, String> get, BiFunction<R, String, R> set) {
        return new TextEntry(name, value.map(get), typed -> edit("Set " + name, record -> set.apply(record, typed)));
    }

    /** One of several values. */
    public <V> Choice<V> choice(String name, Function<R, V> get, BiFunction<R, V, R> set) {
        return new Choice<>(name, value.map(get),
                chosen -> edit("Set " + name, record -> set.apply(record, chosen)));
    }
}

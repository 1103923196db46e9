package gripwright.desktop.setup;

import gripwright.desktop.support.Choice;
import gripwright.desktop.support.NumberEntry;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Subject;
import gripwright.desktop.support.TextEntry;
import gripwright.desktop.support.Workbench;
import gripwright.model.Handedness;
import gripwright.model.Metric;
import gripwright.model.Player;
import gripwright.model.ReadingSource;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.units.Dimension;
import gripwright.units.Unit;
import gripwright.units.UnitChoice;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.value.ObservableValue;

/** The player, what belongs to the day, where readings come from, and the shop's units, as fields. */
public final class SetupViewModel {

    /** Quantities that a shop reads in one of several units. */
    static final List<Dimension> CHOSEN = List.of(Dimension.SPEED, Dimension.DISTANCE, Dimension.HEIGHT,
            Dimension.LENGTH, Dimension.MASS, Dimension.ANGULAR_RATE);

    private final Subject<Session> session;
    private final Subject<Player> player;
    private final Subject<ReadingSource> source;
    private final Subject<ShopSettings> settings;

    SetupViewModel(Workbench workbench) {
        session = Subject.session(workbench);
        player = session.part(Session::player, Session::withPlayer);
        source = session.part(Session::source, Session::withSource);
        settings = Subject.settings(workbench);
    }

    /** Whether the player still has no label, so that work begins there. */
    boolean isNameless() {
        return player.get().label().isBlank();
    }

    TextEntry label() {
        return player.text("player", Player::label, Player::withLabel);
    }

    Choice<Handedness> hand() {
        return player.choice("hand", Player::hand, Player::withHand);
    }

    NumberEntry handLength() {
        return player.number("hand length", Quantity.LENGTH, Player::handLengthMm, Player::withHandLengthMm);
    }

    NumberEntry longestFinger() {
        return player.number("longest finger", Quantity.LENGTH, Player::longestFingerMm, Player::withLongestFingerMm);
    }

    TextEntry gloveSize() {
        return player.text("glove size", Player::gloveSize, Player::withGloveSize);
    }

    TextEntry currentGrip() {
        return player.text("current grip", Player::currentGrip, Player::withCurrentGrip);
    }

    NumberEntry currentWraps() {
        return player.optionalCount("wraps under the current grip", Player::currentWraps, Player::withCurrentWraps);
    }

    TextEntry painSites() {
        return player.text("where hands hurt", Player::painSites, Player::withPainSites);
    }

    ObservableValue<Boolean> hurts() {
        return player.value().map(who -> !who.painSites().isBlank());
    }

    TextEntry playerNote() {
        return player.text("note on the player", Player::note, Player::withNote);
    }

    /** The day of the visit as year, month and day, which nobody can misread. */
    TextEntry date() {
        return session.text("day of the visit", now -> now.date().toString(), (now, typed) -> {
            try {
                return now.withDate(LocalDate.parse(typed));
            } catch (DateTimeParseException unreadable) {
                throw new IllegalArgumentException("'" + typed + "' is not a day; write year, month and day like 2026-03-14.",
                        unreadable);
            }
        });
    }

    TextEntry sessionNote() {
        return session.text("note on the session", Session::note, Session::withNote);
    }

    TextEntry ball() {
        return session.text("ball", Session::ball, Session::withBall);
    }

    TextEntry glove() {
        return session.text("glove and its state", Session::glove, Session::withGlove);
    }

    TextEntry place() {
        return session.text("bay and mat", Session::place, Session::withPlace);
    }

    TextEntry sourceName() {
        return source.text("source of readings", ReadingSource::name, ReadingSource::withName);
    }

    Choice<ReadingSource.ClosureAxis> closureAxis() {
        return source.choice("axis of the closure rate", ReadingSource::closureAxis, ReadingSource::withClosureAxis);
    }

    /** Whether the source works this metric out of a model instead of measuring it. */
    Choice<Boolean> modelled(Metric metric) {
        return source.choice("modelled readings", now -> now.modelled().contains(metric),
                (now, modelled) -> now.withModelled(with(now.modelled(), metric, modelled)));
    }

    private static Set<Metric> with(Set<Metric> metrics, Metric metric, boolean in) {
        Set<Metric> changed = EnumSet.noneOf(Metric.class);
        changed.addAll(metrics);
        if (in) {
            changed.add(metric);
        } else {
            changed.remove(metric);
        }
        return changed;
    }

    /** The modelled readings in words: 'apex, total'. */
    ObservableValue<String> modelledText() {
        return source.value().map(now -> now.modelled().isEmpty() ? "none"
                : now.modelled().stream().map(Metric::text).collect(Collectors.joining(", ")));
    }

    Choice<Unit> unit(Dimension dimension) {
        return settings.choice("unit of " + text(dimension), now -> now.units().of(dimension),
                (now, unit) -> now.withUnits(now.units().with(unit)));
    }

    static List<Unit> units(Dimension dimension) {
        return Arrays.stream(Unit.values()).filter(unit -> unit.dimension() == dimension).toList();
    }

    static String text(Dimension dimension) {
        return switch (dimension) {
            case SPEED -> "speed";
            case DISTANCE -> "distance";
            case HEIGHT -> "height";
            case LENGTH -> "lengths on the club";
            case ANGULAR_RATE -> "closure rate";
            case MASS -> "mass";
            default -> dimension.name().toLowerCase(java.util.Locale.ROOT);
        };
    }

    void useImperial() {
        settings.editOrSay("Set all units to imperial", now -> now.withUnits(UnitChoice.imperial()));
    }

    void useMetric() {
        settings.editOrSay("Set all units to metric", now -> now.withUnits(UnitChoice.metric()));
    }

    Choice<Character> decimalMark() {
        return settings.choice("decimal mark", ShopSettings::decimalMark, ShopSettings::withDecimalMark);
    }
}

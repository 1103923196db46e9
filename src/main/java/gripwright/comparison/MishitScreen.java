package gripwright.comparison;

import gripwright.model.Metric;
import gripwright.model.ReadingText;
import gripwright.statistics.OutlierFlag;
import gripwright.statistics.OutlierScreen;
import gripwright.statistics.OutlierSide;
import gripwright.units.NumberText;
import java.util.ArrayList;
import java.util.List;

/** Looks for shots that seem mishit among those that are scored. It flags; only the fitter sets aside. */
final class MishitScreen {

    private final ComparisonTask task;
    private final List<Metric> metrics = new ArrayList<>();
    private final List<PlayedShot> shots;

    MishitScreen(ComparisonTask task) {
        this.task = task;
        this.shots = task.played().shots().stream().filter(PlayedShot::isScored).toList();
        for (Metric metric : Metric.values()) {
            if (metric.tellsMishit() && shots.stream().anyMatch(s -> s.shot().readings().value(metric).isPresent())) {
                metrics.add(metric);
            }
        }
    }

    List<MishitFlag> flags() {
        if (metrics.isEmpty()) {
            return List.of();
        }
        double[][] readings = new double[shots.size()][metrics.size()];
        int[] configuration = new int[shots.size()];
        for (int i = 0; i < readings.length; i++) {
            configuration[i] = shots.get(i).configuration();
            for (int m = 0; m < metrics.size(); m++) {
                readings[i][m] = shots.get(i).shot().readings().value(metrics.get(m)).orElse(Double.NaN);
            }
        }
        return OutlierScreen.USUAL.flags(readings, configuration, metrics.stream().map(MishitScreen::side).toList())
                .stream().map(flag -> flag(flag, readings)).toList();
    }

    /** A speed or a carry tells a mishit only where it is low. */
    private static OutlierSide side(Metric metric) {
        return switch (metric) {
            case SPEED_RATIO, BALL_SPEED, CARRY -> OutlierSide.LOW;
            default -> OutlierSide.EITHER;
        };
    }

    private MishitFlag flag(OutlierFlag flag, double[][] readings) {
        PlayedShot shot = shots.get(flag.row());
        Metric metric = metrics.get(flag.column());
        ReadingText text = ReadingText.of(task.shop(), task.session().player().hand());
        String label = task.played().configurations().get(shot.configuration()).label();
        String symbol = text.unit(metric).symbol();
        String value = text.worded(metric, readings[flag.row()][flag.column()])
                + (symbol.isEmpty() || metric.sign().positiveWord(task.session().player().hand()).length() > 0 ? ""
                : "\u00a0" + symbol);
        String score = NumberText.withDecimalMark(task.shop().decimalMark()).format(Math.abs(flag.score()), 1);
        String sentence = flag.cause() == OutlierFlag.Cause.ONE_READING
                ? "Mishit? " + capital(metric.text()) + " of " + value + " stands out from the other shots of " + label
                        + " (" + score + " robust SDs from their middle). Set it aside if you saw it."
                : "Mishit? Its readings don't go together as in the other shots, " + metric.text()
                        + " most of all. Set it aside if you saw it.";
        return new MishitFlag(shot.shot().id(), shot.stint().id(), shot.stint().configurationId(), List.of(metric),
                sentence);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

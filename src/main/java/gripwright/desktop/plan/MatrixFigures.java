package gripwright.desktop.plan;

import gripwright.balance.GripShape;
import gripwright.balance.RulesCheck;
import gripwright.desktop.support.NumberStyle;
import gripwright.desktop.support.Quantity;
import gripwright.desktop.support.Workbench;
import gripwright.planning.PlanCheck;
import gripwright.units.NumberText;
import gripwright.units.Swingweight;
import gripwright.units.Unit;
import java.util.stream.Collectors;

/** The figures of a column of the test matrix as the shop reads them; blank where nothing is known. */
final class MatrixFigures {

    private static final double SAME_PLACE_MM = 0.5;

    private final Workbench workbench;

    MatrixFigures(Workbench workbench) {
        this.workbench = workbench;
    }

    private String number(Quantity quantity, Double internal, int decimals) {
        if (internal == null) {
            return "";
        }
        Unit unit = workbench.settings().get().units().of(quantity.dimension());
        return workbench.numbers().format(unit.fromInternal(internal), decimals);
    }

    private int decimals(Quantity quantity) {
        return quantity.decimals(workbench.settings().get().units().of(quantity.dimension()));
    }

    String diameter(PlanCheck.Column column, double placeMm) {
        if (column.shape() == null) {
            return "";
        }
        return column.shape().atRuler().stream().filter(at -> Math.abs(at.positionMm() - placeMm) < SAME_PLACE_MM)
                .findFirst().map(GripShape.At::diameterMm)
                .map(diameter -> number(Quantity.DIAMETER, diameter, decimals(Quantity.DIAMETER))).orElse("");
    }

    /** The size as the trade says it; blank where nothing is known. */
    String size(PlanCheck.Column column) {
        return column.shape() == null || column.shape().size() == null ? "" : column.shape().size().name();
    }

    String gripMass(PlanCheck.Column column) {
        return number(Quantity.MASS, column.gripMassGrams(), decimals(Quantity.MASS));
    }

    String swingweight(PlanCheck.Column column) {
        Swingweight predicted = column.balance() == null ? null : column.balance().swingweight();
        return predicted == null ? "" : predicted.text();
    }

    String clubMass(PlanCheck.Column column) {
        return column.balance() == null ? ""
                : number(Quantity.MASS, column.balance().totalMassGrams(), decimals(Quantity.MASS));
    }

    String balancePoint(PlanCheck.Column column) {
        return column.balance() == null ? ""
                : number(Quantity.LENGTH, column.balance().balancePointMm(), decimals(Quantity.LENGTH));
    }

    /** kg·cm², whole numbers: parts are not known finer. */
    String inertia(PlanCheck.Column column) {
        Double inertia = column.balance() == null ? null : column.balance().inertiaKgCm2();
        return inertia == null ? "" : workbench.numbers().format(inertia, 0);
    }

    String rules(PlanCheck.Column column) {
        return column.rules() == null ? "" : column.rules().outcome().text();
    }

    /** Every finding of the rules check, one a line. */
    String rulesAtLength(PlanCheck.Column column) {
        return column.rules() == null ? "" : RulesCheck.SECTION + "\n" + column.rules().findings().stream()
                .map(finding -> finding.point() + ": " + finding.outcome().text() + ". " + finding.sentence())
                .collect(Collectors.joining("\n"));
    }

    /** A place along the grip in the shop's unit, '2 in'. */
    String place(double placeMm) {
        Unit unit = workbench.settings().get().units().of(Quantity.LENGTH.dimension());
        NumberText text = workbench.numbers();
        return new NumberStyle(text, unit, 0, 1).write(placeMm) + " " + unit.symbol();
    }
}

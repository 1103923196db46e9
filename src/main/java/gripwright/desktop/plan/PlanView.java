package gripwright.desktop.plan;

import gripwright.desktop.support.BesideOrBelow;
import gripwright.desktop.support.Place;
import gripwright.desktop.support.PlaceKey;
import gripwright.desktop.support.SectionColumns;
import gripwright.desktop.support.Sheets;
import gripwright.desktop.support.Workbench;
import javafx.scene.Node;

/** Plan on one sheet: the test matrix, what it can tell, the order of stints, the stock list. */
public final class PlanView implements Place {

    private static final double COLUMN = 560;
    private static final double BESIDE = 352;

    private final Node node;

    public PlanView(Workbench workbench) {
        MatrixViewModel matrix = new MatrixViewModel(workbench);
        FindingsSection findings = new FindingsSection(workbench,
                new FindingsViewModel(workbench, matrix.check()));
        OrderSection order = new OrderSection(workbench);
        StockSection stock = new StockSection(workbench);
        SectionColumns told = new SectionColumns(BESIDE, findings.told(), findings.seen());
        node = Sheets.page(PlaceKey.PLAN,
                new BesideOrBelow(new MatrixSection(workbench, matrix).node(), told, BESIDE),
                new SectionColumns(COLUMN, order.order(), order.clubs()), stock.grips(), stock.tapes());
    }

    @Override
    public PlaceKey key() {
        return PlaceKey.PLAN;
    }

    @Override
    public Node node() {
        return node;
    }
}

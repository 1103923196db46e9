package gripwright.desktop.support;

import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;

/**
 * Everything that a computation away from the window's thread may look at, all of it immutable.
 *
 * @param session the session
 * @param test the test in view, one of the session's
 * @param settings the shop's settings
 * @param stock the shop's stock list
 * @param revision grows with every change of any of them
 */
public record Snapshot(Session session, ClubTest test, ShopSettings settings, Stock stock, long revision) {
}

/**
 * What every place of the window shares: the {@link gripwright.desktop.support.Workbench} that holds what they show,
 * the {@link gripwright.desktop.support.Place} they are, entry fields, tables, empty states and the look.
 *
 * <p>A place is a package of its own with a view and a view-model. The view-model projects from the workbench and may use
 * {@code javafx.beans}; the view holds controls and no logic. Everything here runs on the window's thread unless it says
 * otherwise.
 */
package gripwright.desktop.support;

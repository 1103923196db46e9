package gripwright.desktop.support;

import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * A change to the shop's settings or stock list with a name that undo can say.
 *
 * @param label in the imperative, 'Add a grip to the stock list'
 * @param change from the shop before to the shop after
 */
public record ShopEdit(String label, UnaryOperator<Shop> change) {

    public ShopEdit {
        if (label == null || label.isBlank()) {
            throw new IllegalArgumentException("An edit needs a name that undo can say.");
        }
        Objects.requireNonNull(change, "change");
    }

    /** A change to the settings alone. */
    public static ShopEdit settings(String label, UnaryOperator<ShopSettings> change) {
        return new ShopEdit(label, shop -> shop.withSettings(change.apply(shop.settings())));
    }

    /** A change to the stock list alone. */
    public static ShopEdit stock(String label, UnaryOperator<Stock> change) {
        return new ShopEdit(label, shop -> shop.withStock(change.apply(shop.stock())));
    }
}

package gripwright.desktop.support;

import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import java.util.Objects;

/** What belongs to the shop and not to one session: its settings and its stock list. */
public record Shop(ShopSettings settings, Stock stock) {

    public Shop {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(stock, "stock");
    }

    public Shop withSettings(ShopSettings settings) {
        return new Shop(settings, stock);
    }

    public Shop withStock(Stock stock) {
        return new Shop(settings, stock);
    }
}

package gripwright.report;

import com.samskivert.mustache.Mustache;
import gripwright.charts.Look;
import gripwright.comparison.Comparison;
import gripwright.model.ClubTest;
import gripwright.model.Session;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.units.DayText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The summary of a session as pages: for each test the player's page and the numbers, then the work order. */
public final class SummaryPages {

    /** 8.5 pt in the pixels that the template's objects are measured in. */
    private static final Look LOOK = Look.paper().withTextSize(8.5 * PdfPages.PIXELS_PER_POINT);
    private static final double MARGIN_MM = 16;
    private static final double PIXELS_PER_MM = 96 / 25.4;

    private final Session session;
    private final List<Comparison> comparisons;
    private final ShopSettings shop;
    private final Stock stock;

    /**
     * @param session the session
     * @param comparisons one for each of its tests, in their order
     * @param shop name, note and units of the shop
     * @param stock what the shop has, for the list of what to take
     */
    public SummaryPages(Session session, List<Comparison> comparisons, ShopSettings shop, Stock stock) {
        if (comparisons.size() != session.tests().size()) {
            throw new IllegalArgumentException("A summary needs one comparison for each test of the session.");
        }
        this.session = session;
        this.comparisons = List.copyOf(comparisons);
        this.shop = shop;
        this.stock = stock;
    }

    /**
     * The pages as a PDF file's content; the work order lies across.
     *
     * @throws IOException when the pages can't be laid out
     */
    public byte[] toPdf(PaperSize paper) throws IOException {
        PagePictures pictures = new PagePictures();
        byte[] summary = PdfPages.of(summary(paper, pictures), pictures, LOOK);
        byte[] workOrder = PdfPages.of(workOrder(paper), pictures, LOOK);
        return PdfPages.joined(summary, workOrder, title());
    }

    /** The player's page and the numbers as XHTML, pictures left as objects. */
    String summary(PaperSize paper, PagePictures pictures) throws IOException {
        double width = Math.floor((paper.widthMm() - 2 * MARGIN_MM) * PIXELS_PER_MM) - 1;
        List<Map<String, Object>> tests = new ArrayList<>();
        for (int at = 0; at < comparisons.size(); at++) {
            ClubTest test = session.tests().get(at);
            Map<String, Object> section = new LinkedHashMap<>(shared());
            section.putAll(new PlayerSection(session, test, comparisons.get(at), shop).content(pictures, LOOK, width));
            section.putAll(new NumbersSection(session, test, comparisons.get(at), shop).content());
            tests.add(section);
        }
        Map<String, Object> content = page(paper.widthMm(), paper.heightMm());
        content.put("tests", tests);
        return filled("summary.xhtml", content);
    }

    /** The work order as XHTML. */
    String workOrder(PaperSize paper) throws IOException {
        Map<String, Object> content = page(paper.heightMm(), paper.widthMm());
        content.putAll(new WorkOrderSection(session, comparisons, shop, stock).content());
        return filled("work-order.xhtml", content);
    }

    private Map<String, Object> page(double widthMm, double heightMm) throws IOException {
        Map<String, Object> content = new LinkedHashMap<>(shared());
        content.put("title", title());
        content.put("pageWidth", widthMm);
        content.put("pageHeight", heightMm);
        content.put("styles", resource("summary.css"));
        content.put("footer", footer());
        return content;
    }

    private String title() {
        return "Summary: " + shared().get("player");
    }

    private static String filled(String template, Map<String, Object> content) throws IOException {
        return Mustache.compiler().escapeHTML(true).defaultValue("").emptyStringIsFalse(true)
                .withFormatter(SummaryPages::printable).compile(resource(template)).execute(content);
    }

    /** What a page can show: a control character, such as a tab in a label, becomes a space. */
    private static String printable(Object value) {
        return String.valueOf(value).replaceAll("\\p{Cntrl}+", " ");
    }

    private Map<String, Object> shared() {
        Map<String, Object> shared = new LinkedHashMap<>();
        shared.put("player", session.player().label().isBlank() ? "Player" : session.player().label());
        shared.put("hand", session.player().hand().text());
        shared.put("date", DayText.of(session.date()));
        shared.put("shop", shop.shopName());
        shared.put("invented", session.invented());
        return shared;
    }

    private String footer() {
        String name = shop.shopName().isBlank() ? "" : shop.shopName() + ", ";
        return name + DayText.of(session.date()) + (session.invented() ? ", invented demo data" : "");
    }

    private static String resource(String name) throws IOException {
        try (InputStream stream = SummaryPages.class.getResourceAsStream("/gripwright/report/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

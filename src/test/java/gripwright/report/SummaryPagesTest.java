package gripwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gripwright.comparison.Comparer;
import gripwright.model.Session;
import gripwright.model.SetClub;
import gripwright.model.ShopSettings;
import gripwright.model.Stock;
import gripwright.storage.SessionFile;
import gripwright.units.UnitChoice;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The summary as a PDF: complete, on the right paper, drawn as vectors, and silent on what is private. */
class SummaryPagesTest {

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final Stock NO_STOCK = new Stock(List.of(), List.of());

    private static Session demo;

    @BeforeAll
    static void readDemo() throws Exception {
        Path file = Path.of("demo-data", "left-handed-8-iron.json");
        demo = new SessionFile().parse(Files.readAllBytes(file), file.toString()).value();
    }

    private static byte[] pdf(Session session, ShopSettings shop, PaperSize paper) throws IOException {
        return new SummaryPages(session, Comparer.withSettings(shop).compareAll(session), shop, NO_STOCK).toPdf(paper);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void holdsPlayerPageNumbersAndWorkOrder() throws IOException {
        String text = text(pdf(demo, ShopSettings.usual(), PaperSize.A4));
        assertThat(text).contains("Nobody can tell yet", "Numbers", "Work order", "invented demo data", "club speed, mph",
                "5-iron", "twist");
        assertThat(text).doesNotContain("NaN").doesNotContain("null").doesNotContain("{{");
    }

    @Test
    void playerPageIsOnePageAndPlain() throws IOException {
        for (PaperSize paper : PaperSize.values()) {
            byte[] pdf = pdf(demo, ShopSettings.usual(), paper);
            assertThat(page(pdf, 1)).as("%s", paper).contains("The odds: ", "The player would not play B or E.",
                    "What next", "What was tried", "like a broom")
                    .doesNotContain("smallest differences").doesNotContain("prior");
            assertThat(page(pdf, 2)).as("%s", paper).contains("Numbers", "Why this advice", "smallest differences");
        }
    }

    @Test
    void oddsOfKeepingSpeakOfTheNearestOther() throws Exception {
        Path file = Path.of("demo-data", "no-difference.json");
        Session same = new SessionFile().parse(Files.readAllBytes(file), file.toString()).value();
        assertThat(page(pdf(same, ShopSettings.usual(), PaperSize.A4), 1))
                .containsPattern("Stay with A").containsPattern("The odds: [B-E] comes nearest, with ");
    }

    @Test
    void saysTheDayAsTheScreenDoes() throws IOException {
        assertThat(page(pdf(demo, ShopSettings.usual(), PaperSize.A4), 1)).contains("14 Mar 2026")
                .doesNotContain("2026-03-14");
    }

    @Test
    void workOrderOfTheDemoIsOnePageWithItsSignOff() throws IOException {
        for (PaperSize paper : PaperSize.values()) {
            byte[] pdf = pdf(demo, ShopSettings.usual(), paper);
            assertThat(page(pdf, pages(pdf))).as("%s", paper).contains("Work order", "Cord, +1/32, 57 g", "core 0.600 in; round, pattern square to the face",
                    "size at 2 in", "56\u00B0 wedge", "Ventilate", "signed");
        }
    }

    @Test
    void fourteenClubsAreOnePage() throws IOException {
        List<SetClub> clubs = new ArrayList<>();
        for (int at = 0; at < 14; at++) {
            SetClub like = demo.set().get(at % demo.set().size());
            clubs.add(like.withId("club-" + at).withName("club number " + at));
        }
        for (PaperSize paper : PaperSize.values()) {
            byte[] pdf = pdf(demo.withSet(clubs), ShopSettings.usual(), paper);
            assertThat(page(pdf, pages(pdf))).as("%s", paper).contains("Work order", "club number 0", "club number 13",
                    "signed");
        }
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static String page(byte[] pdf, int number) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(number);
            stripper.setEndPage(number);
            return stripper.getText(document);
        }
    }

    @Test
    void liesOnThePaperThatWasAskedFor() throws IOException {
        for (PaperSize paper : PaperSize.values()) {
            try (PDDocument document = Loader.loadPDF(pdf(demo, ShopSettings.usual(), paper))) {
                PDPage first = document.getPage(0);
                PDPage last = document.getPage(document.getNumberOfPages() - 1);
                assertThat(first.getMediaBox().getWidth() / POINTS_PER_MM).isCloseTo(paper.widthMm(), within(0.2));
                assertThat(first.getMediaBox().getHeight() / POINTS_PER_MM).isCloseTo(paper.heightMm(), within(0.2));
                assertThat(last.getMediaBox().getWidth() / POINTS_PER_MM).isCloseTo(paper.heightMm(), within(0.2));
            }
        }
    }

    @Test
    void drawsItsPicturesAsVectors() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(demo, ShopSettings.usual(), PaperSize.A4))) {
            int forms = 0;
            for (PDPage page : document.getPages()) {
                forms += formsWithoutImages(page.getResources());
            }
            assertThat(forms).as("drawn pictures").isPositive();
        }
    }

    private static int formsWithoutImages(PDResources resources) throws IOException {
        int forms = 0;
        for (COSName name : resources.getXObjectNames()) {
            assertThat(resources.getXObject(name)).isNotInstanceOf(PDImageXObject.class);
            if (resources.getXObject(name) instanceof PDFormXObject form) {
                forms += 1 + formsWithoutImages(form.getResources());
            }
        }
        return forms;
    }

    @Test
    void whereHandsHurtIsOnNoPage() throws IOException {
        Session sore = demo.withPlayer(demo.player().withPainSites("left thumb, base joint"));
        assertThat(text(pdf(sore, ShopSettings.usual(), PaperSize.A4))).doesNotContain("thumb").doesNotContain("joint");
    }

    @Test
    void speaksTheShopsUnits() throws IOException {
        ShopSettings metric = ShopSettings.usual().withUnits(UnitChoice.metric()).withDecimalMark(',')
                .withShopName("Bay & Bench <Nord>");
        String text = text(pdf(demo, metric, PaperSize.A4));
        assertThat(text).contains("club speed, km/h", "carry, m", "Bay & Bench <Nord>").doesNotContain("mph");
    }

    @Test
    void aTabInALabelBecomesASpace() throws IOException {
        Session odd = demo.withPlayer(demo.player().withLabel("Player\tof\u0007 \u0416 & \u0394"));
        assertThat(text(pdf(odd, ShopSettings.usual(), PaperSize.A4))).contains("Player of \u0416 & \u0394");
    }

    @Test
    void emptySessionSaysWhatWillBeHere() throws IOException {
        Session empty = Session.blank("empty", LocalDate.of(2026, 3, 1));
        String text = text(pdf(empty, ShopSettings.usual(), PaperSize.LETTER));
        assertThat(text).contains("nothing to compare yet", "No club of the set is written down yet")
                .doesNotContain("NaN").doesNotContain("null");
    }

    @Test
    void previewShowsThePagesOfTheFile() throws IOException {
        byte[] pdf = pdf(demo, ShopSettings.usual(), PaperSize.A4);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(PagePreview.of(pdf, 36)).hasSize(document.getNumberOfPages())
                    .allSatisfy(page -> assertThat(page.getWidth()).isGreaterThan(200));
        }
    }
}

package org.moultwright.ui.broods;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.document.PdfPicturePages;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.label.Paper;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.chart.SurvivalChart;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.print.Pixels;
import org.moultwright.ui.print.Printers;
import org.moultwright.ui.print.Printout;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TakeInFolders;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A brood looked at closely, by keyboard, over a real store with the demo room's broods and one in pots. */
@ExtendWith(ApplicationExtension.class)
class BroodPageUiTest {
    private static final Instant NOW = Instant.parse("2026-05-03T20:00:00Z");

    @TempDir
    static Path folder;

    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomView.EMPTY);
    private final List<Image> printed = new ArrayList<>();
    private Printout printout = Printout.PRINTED;
    private H2Store store;
    private BroodsViewModel model;
    private BroodsView view;

    @Start
    void start(Stage stage) {
        store = H2Store.open(folder.resolve(UUID.randomUUID() + ".store"));
        TakeInFolders takeIn = new TakeInFolders(new PlainBroodFolders(), store.book());
        takeIn.takeIn(Path.of("demo-data/cc-26-a"));
        takeIn.takeIn(Path.of("demo-data/cc-26-b"));
        takeIn.takeIn(Path.of("demo-data/cc-26-c"));
        BroodRecord potted = InventedPots.lived("CC-26-D", "26D", 20);
        store.book().takeIn(potted, ReadingSource.of(potted));
        room.set(new Room(store.book(), store.readings(), new Forecaster(TimingsFile.shipped())::forecast).at(NOW));
        Appearance appearance = new Appearance();
        model = new BroodsViewModel(desk());
        view = new BroodsView(model, appearance.paletteProperty());
        Scene scene = new Scene(view, 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        view.takeFocus();
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void everyAnimalIsAccountedForAndTheCurveAgreesWithTheLedger(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        BroodPage page = page();
        List<LedgerBars.Bar> bars = page.bars();
        int rest = bars.stream().skip(1).mapToInt(LedgerBars.Bar::count).sum();
        assertThat(bars.get(0).count()).isEqualTo(118).isEqualTo(rest);
        // By hand from the ledger: 118 - 5 infertile - 7 later = 106; 106/118 = 0.898, and Greenwood's log-log limits
        // exp(ln 0.898 · exp(±1.96 · 0.03097 / 0.1073)) are 0.828 and 0.941.
        assertThat(page.survivalWords()).isEqualTo("In trays 90 % of 118 lived 39 days; 95 % limits 83 to 94 %.");
        assertThat(page.balance()).isEqualTo("Every animal is accounted for.");
        SurvivalChart.Curve curve = page.curves().get(0);
        SurvivalChart.Step last = curve.steps().get(curve.steps().size() - 1);
        // Nobody was potted yet, so that the product limit is the share alive of those that came into trays.
        int inTrays =
                page.beside().own().orElseThrow().brood().record().ledger().aliveInTrays();
        int watched = page.beside().own().orElseThrow().survival().orElseThrow().animals();
        assertThat(last.survival()).isCloseTo((double) inTrays / watched, within(1e-9));
        assertThat(last.lower()).isLessThan(last.survival());
        assertThat(last.upper()).isGreaterThan(last.survival());
        assertThat(page.climate(Optional.empty()).orElseThrow().days()).isNotEmpty();
        robot.type(KeyCode.LEFT);
        assertThat(page.readingWordsProperty().get()).startsWith("Saturday 2 May: ");
        robot.type(KeyCode.ESCAPE);
        assertThat(model.closelyProperty().get()).isEmpty();
    }

    @Test
    void anotherBroodIsLaidBesideIt(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        ToggleButton chip = robot.lookup(
                        (ToggleButton button) -> button.getText().equals("CC-26-B"))
                .queryAs(ToggleButton.class);
        robot.interact(chip::requestFocus);
        robot.type(KeyCode.SPACE);
        assertThat(page().curves()).extracting(SurvivalChart.Curve::code).containsExactly("CC-26-A", "CC-26-B");
        assertThat(robot.lookup("from the sac").tryQuery()).isPresent();
        assertThat(robot.lookup("94").tryQuery()).isPresent();
        robot.type(KeyCode.SPACE);
        assertThat(page().curves()).hasSize(1);
    }

    @Test
    void aTableOfFourBroodsIsWholeAndStaysInItsCard(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        robot.interact(() -> List.of("CC-26-B", "CC-26-C", "CC-26-D").forEach(page().beside()::toggle));
        Region card = robot.lookup(".compare-card").queryAs(Region.class);
        Region table = robot.lookup(".compare-table").queryAs(Region.class);
        robot.interact(() -> {
            double inside = card.localToScene(card.getLayoutBounds()).getMaxX()
                    - card.getInsets().getRight();
            assertThat(table.localToScene(table.getLayoutBounds()).getMaxX()).isLessThanOrEqualTo(inside + 1);
            assertThat(card.localToScene(card.getLayoutBounds()).getMaxX())
                    .isLessThanOrEqualTo(card.getScene().getWidth());
        });
    }

    @Test
    void whoComesBackToAnOpenBroodHasItsKeys(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        robot.interact(() -> {
            Button elsewhere = new Button("elsewhere");
            Scene scene = view.getScene();
            scene.setRoot(new StackPane(elsewhere));
            elsewhere.requestFocus();
            scene.setRoot(view);
            view.takeFocus();
        });
        robot.type(KeyCode.LEFT);
        assertThat(page().readingWordsProperty().get()).startsWith("Saturday 2 May: ");
    }

    @Test
    void aRibbonThatIsClickedIsReadByKeys(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        robot.clickOn("Print");
        robot.clickOn(".close-ribbon");
        robot.moveTo("Back");
        Instant pointedAt = page().readingProperty().get().orElseThrow();
        robot.type(KeyCode.LEFT);
        assertThat(page().readingProperty().get()).contains(pointedAt.minus(Duration.ofDays(1)));
    }

    @Test
    void thePageIsPrintedAndSavedAsOnePageOfPdf(FxRobot robot) throws IOException {
        robot.type(KeyCode.ENTER);
        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);
        assertThat(printed)
                .singleElement()
                .satisfies(page -> assertThat(page.getWidth()).isGreaterThan(2500));
        assertThat(page().newsProperty().get()).isEqualTo("Sent to the printer.");
        robot.clickOn("Save as PDF");
        Path pdf = folder.resolve("CC-26-A.pdf");
        assertThat(page().newsProperty().get()).isEqualTo("Saved as " + pdf + ".");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getPage(0).getMediaBox().getWidth())
                    .isGreaterThan(document.getPage(0).getMediaBox().getHeight());
        }
        Path again = folder.resolve("again.pdf");
        Path onceMore = folder.resolve("once-more.pdf");
        for (Path same : List.of(again, onceMore)) {
            new PdfPicturePages(Paper.A4).save(Pixels.of(printed.get(0)), "CC-26-A", NOW, same);
        }
        assertThat(again).hasSameBinaryContentAs(onceMore);
        Files.delete(onceMore);
        Files.delete(again);
    }

    @Test
    void whatIsReadOnScreenLeavesNoMarkOnPaper(FxRobot robot) {
        robot.type(KeyCode.ENTER);
        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);
        robot.type(KeyCode.LEFT, 20);
        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);
        assertThat(printed).hasSize(2);
        assertThat(Pixels.of(printed.get(1)).argb())
                .isEqualTo(Pixels.of(printed.get(0)).argb());
    }

    @Test
    void aPageThatIsNotPrintedOrSavedIsAProblemAndNoNews(FxRobot robot) throws IOException {
        robot.type(KeyCode.ENTER);
        printout = Printout.hindered(Printers.NO_PRINTER);
        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);
        assertThat(page().newsProperty().get()).isEmpty();
        assertThat(page().problemProperty().get()).startsWith("This machine has no printer. Set one up");
        Path inTheWay = folder.resolve("CC-26-A.pdf");
        Files.deleteIfExists(inTheWay);
        Files.createDirectory(inTheWay);
        robot.clickOn("Save as PDF");
        assertThat(page().newsProperty().get()).isEmpty();
        assertThat(page().problemProperty().get()).startsWith("Not saved: " + inTheWay + " is not a file.");
        Files.delete(inTheWay);
        robot.clickOn("Save as PDF");
        assertThat(page().problemProperty().get()).isEmpty();
        assertThat(page().newsProperty().get()).isEqualTo("Saved as " + inTheWay + ".");
        Files.delete(inTheWay);
    }

    @Test
    void everyStateIsPictured(FxRobot robot) throws IOException {
        ScreenShots.of("brood-page", 1188, 752, look -> pictured(look, false));
        ScreenShots.of("brood-page-beside", 1188, 752, look -> pictured(look, true));
        ScreenShots.of("brood-page-beside-large", 1828, 1032, look -> pictured(look, true));
        robot.type(KeyCode.ENTER);
        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);
        ImageIO.write(
                SwingFXUtils.fromFXImage(printed.get(0), null),
                "png",
                Path.of("target", "screenshots", "brood-paper.png").toFile());
        assertThat(printed).hasSize(1);
    }

    private BroodsView pictured(Appearance look, boolean isBeside) {
        BroodsViewModel shown = new BroodsViewModel(desk());
        BroodsView view = new BroodsView(shown, look.paletteProperty());
        shown.look();
        if (isBeside) {
            shown.closelyProperty().get().orElseThrow().beside().toggle("CC-26-B");
        }
        return view;
    }

    private BroodPage page() {
        return model.closelyProperty().get().orElseThrow();
    }

    private BroodsDesk desk() {
        return new BroodsDesk(
                room,
                () -> {},
                InventedWays.in(store.book()),
                InventedBeliefs.in(store.book()),
                new BroodPaper(
                        (title, page) -> {
                            printed.add(page.get());
                            return printout;
                        },
                        new PdfPicturePages(Paper.A4),
                        name -> Optional.of(folder.resolve(name))),
                new InlineRunner(),
                InstantSource.fixed(NOW),
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                PhotoDesk.none(new InlineRunner(), new DayWords(RoomFixture.ZONE)));
    }
}

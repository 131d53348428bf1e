package org.moultwright.ui.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.IntStream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.DeviceException;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.device.serial.KnownLinesFile;
import org.moultwright.document.PdfPicturePages;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.label.Paper;
import org.moultwright.store.H2Store;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.alarm.InventedWatch;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.chart.TraceWindow;
import org.moultwright.ui.finder.FinderDesk;
import org.moultwright.ui.finder.SpokenWire;
import org.moultwright.ui.instrument.InstrumentDesk;
import org.moultwright.ui.print.PaperPrinter;
import org.moultwright.ui.print.Printers;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.LeftBeside;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.NoteDisplay;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.RecordCalibration;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TakenBeside;
import org.moultwright.workflow.UndoDeed;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class ClimateUiTest {
    private static final ProbeIdentity SENSOR = ProbeIdentity.ofSensor("28-1A2B");

    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomFixture.room());
    private final InventedWatch invented = new InventedWatch().tooWarm(true);

    @TempDir
    private static Path folder;

    private final KnownLinesFile known = new KnownLinesFile(folder.resolve("probes.txt"));
    private final MemoryLog log = new MemoryLog();
    private final SpokenWire wire = new SpokenWire();
    private final ObjectProperty<Map<String, ColdestWall>> walls = new SimpleObjectProperty<>(Map.of());
    private H2Store store;
    private TraceChart chart;
    private final ObjectProperty<LeftBeside> beside = new SimpleObjectProperty<>(LeftBeside.NOTHING);
    private ClimateViewModel model;

    @Start
    void start(Stage stage) throws IOException {
        store = H2Store.open(Files.createTempDirectory(folder, "climate").resolve("room.store"));
        Appearance appearance = new Appearance();
        model = new ClimateViewModel(desk());
        ClimateView view = new ClimateView(model, appearance.paletteProperty(), new Group());
        Scene scene = new Scene(view, 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        view.takeFocus();
        chart = (TraceChart) scene.getFocusOwner();
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void keysZoomAndMoveFromADayToAMinuteAndBack(FxRobot robot) {
        robot.interact(() -> model.spanProperty().set(TimeSpan.DAY));
        robot.type(KeyCode.UP, 40);
        assertThat(window().length()).isEqualTo(Duration.ofMinutes(1));
        Instant start = window().from();
        robot.press(KeyCode.SHIFT).type(KeyCode.LEFT, 4).release(KeyCode.SHIFT);
        assertThat(window().from()).isEqualTo(start.minusSeconds(60));
        robot.type(KeyCode.DOWN, 80);
        assertThat(window().length()).isGreaterThan(Duration.ofDays(365 * 20));
        assertThat(window().to()).isBeforeOrEqualTo(RoomFixture.NOW);
        assertThat(model.spanProperty().get()).isEqualTo(TimeSpan.OWN);
        robot.interact(() -> model.spanProperty().set(TimeSpan.WEEK));
        assertThat(window().length()).isEqualTo(Duration.ofDays(7));
    }

    @Test
    void theWheelKeepsTheInstantUnderThePointer(FxRobot robot) {
        robot.interact(() -> {
            double x = chart.getWidth() / 2;
            chart.fireEvent(moved(x));
            Instant under = chart.readingProperty().get().orElseThrow();
            chart.fireEvent(scrolled(x, 120));
            chart.fireEvent(moved(x));
            assertThat(Duration.between(under, chart.readingProperty().get().orElseThrow())
                            .abs())
                    .isLessThan(Duration.ofMinutes(2));
        });
        assertThat(window().length()).isLessThan(Duration.ofDays(4));
    }

    @Test
    void otherProbesAreLaidOverItAndReadTogether(FxRobot robot) {
        robot.interact(() -> {
            model.chosenProperty().set("P-1");
            model.compared().add("P-2");
        });
        assertThat(model.traceProperty().get().orElseThrow().others())
                .extracting(Trace.Line::name)
                .containsExactly("P-2");
        robot.interact(chart::requestFocus);
        robot.type(KeyCode.LEFT);
        assertThat(model.readingWordsProperty().get()).contains("P-1 2").contains("P-2 2");
    }

    @Test
    void nothingMovesWhileItIsHeldAndThatIsSaid(FxRobot robot) {
        robot.type(KeyCode.H);
        assertThat(model.heldWordsProperty().getValue()).startsWith("Held at 20:41: nothing moves");
        String before = model.nowProperty().get().celsius();
        robot.interact(() -> room.set(RoomFixture.crowded(1)));
        assertThat(model.nowProperty().get().celsius()).isEqualTo(before);
        robot.type(KeyCode.H);
        assertThat(model.heldWordsProperty().getValue()).isEmpty();
    }

    @Test
    void theWallIsJudgedByWhatTheKeeperSaysAndWhatThatAssumesIsSaid(FxRobot robot) {
        robot.interact(() -> model.chosenProperty().set("P-1"));
        assertThat(model.airProperty().get().wall()).isEqualTo("Nothing tells how cold the wall is.");
        robot.interact(() -> model.say(Optional.of(ColdestWall.below(1.5, 1))));
        // 27.0 °C, corrected, and 74 %: dew point 22.0 °C by Sonntag 1990.
        assertThat(model.airProperty().get().air()).contains("dew point 22.0 ±");
        assertThat(model.airProperty().get().wall()).startsWith("Wall 25.5 °C: stays dry, chance of water");
        assertThat(model.airProperty().get().assumes()).contains("as you said; nothing measures it");
        robot.interact(() -> model.say(Optional.of(ColdestWall.below(4.5, 1))));
        assertThat(model.airProperty().get().wall()).contains("may get wet");
        robot.interact(() -> model.say(Optional.of(ColdestWall.below(8, 1))));
        assertThat(model.airProperty().get().wall()).contains("most likely gets wet, air the box");
        robot.interact(() -> model.say(Optional.of(ColdestWall.measuredBy("P-2"))));
        assertThat(model.airProperty().get().wall()).isEqualTo("The probe on the wall, P-2, is silent.");
    }

    @Test
    void theTraceIsPrintedAndWhatCameOfItIsSaid(FxRobot robot) {
        robot.press(KeyCode.CONTROL).type(KeyCode.P).release(KeyCode.CONTROL);
        assertThat(robot.lookup((Node node) ->
                                node instanceof Label label && label.getText().equals(Printers.NO_PRINTER))
                        .tryQuery())
                .isPresent();
        assertThat(ToolkitThread.ask(() -> PrinterPaper.page(
                                        "box 1", model.traceProperty().get().orElseThrow())
                                .snapshot(null))
                        .getWidth())
                .isEqualTo(1500);
    }

    @Test
    void theTraceIsSavedAsAPage(FxRobot robot) throws IOException {
        Button pdf = robot.lookup((Node node) ->
                        node instanceof Button button && button.getText().equals("PDF"))
                .query();
        robot.interact(pdf::fire);
        Path saved = folder.resolve("climate.pdf");
        assertThat(robot.lookup((Node node) ->
                                node instanceof Label label && label.getText().equals("Saved as " + saved + "."))
                        .tryQuery())
                .isPresent();
        try (PDDocument document = Loader.loadPDF(saved.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getDocumentInformation().getTitle()).startsWith("box 1, probe P-1");
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 60);
            long inked = IntStream.range(0, page.getWidth() * page.getHeight())
                    .filter(i -> (page.getRGB(i % page.getWidth(), i / page.getWidth()) & 0xFFFFFF) != 0xFFFFFF)
                    .count();
            assertThat(inked)
                    .as("of %d pixels", page.getWidth() * page.getHeight())
                    .isGreaterThan(2_000);
        }
    }

    @Test
    void everyLinkEndsWhenTheDeskCloses(FxRobot robot) {
        robot.interact(model::close);
        robot.interact(() -> model.connect("P-9", "/dev/probe", "plain-number"));
        assertThat(model.isConnected("P-9")).isFalse();
    }

    @Test
    void theTraceIsReadWithArrowKeys(FxRobot robot) {
        robot.type(KeyCode.LEFT);
        assertThat(model.readingWordsProperty().get()).matches("Sunday 3 May, 18:\\d\\d: 2\\d\\.\\d °C");
    }

    @Test
    void aSpikeAndASilenceAreFound(FxRobot robot) {
        robot.interact(() -> model.spanProperty().set(TimeSpan.MONTH));
        Trace trace = model.traceProperty().get().orElseThrow();
        assertThat(trace.alarms())
                .extracting(Trace.Stretch::words)
                .singleElement()
                .asString()
                .startsWith("above 28.5 for");
        assertThat(trace.residents().get(0).words()).startsWith("A1, A2");
    }

    @Test
    void aSilentProbeSaysWhatToDo(FxRobot robot) {
        robot.interact(() -> model.chosenProperty().set("P-2"));
        assertThat(model.problemProperty().get())
                .isEqualTo("Probe P-2 has been silent for 12 minutes. Last reading 27.0 °C at 20:29. Check the plug.");
    }

    @Test
    void aConnectedProbeIsHeardAndKept(FxRobot robot) {
        robot.interact(() -> model.connect("P-9", "/dev/probe", "plain-number"));
        assertThat(model.probes())
                .anyMatch(row -> row.probe().equals("P-9") && row.reading().equals("26.4 °C"));
        assertThat(log.series("P-9", Instant.EPOCH, RoomFixture.NOW.plusSeconds(1))
                        .size())
                .isEqualTo(1);
        assertThat(log.sensors).containsExactly(Map.entry("P-9", SENSOR));
    }

    @Test
    void aThermometersLowestAndHighestAreFramedAndTold(FxRobot robot) {
        Instant from = RoomFixture.NOW.minus(Duration.ofHours(20));
        Extremes day = new Extremes("box 1", from, RoomFixture.NOW, 22.5, 29.4);
        robot.interact(() -> room.set(with(day)));
        Trace trace = model.traceProperty().get().orElseThrow();
        assertThat(trace.remembered()).containsExactly(new Trace.Remembered(from, RoomFixture.NOW, 22.5, 29.4));
        assertThat(model.readingWordsProperty().get()).endsWith("· frame = thermometer");
        robot.interact(() -> chart.readingProperty().set(Optional.of(RoomFixture.NOW.minus(Duration.ofHours(2)))));
        assertThat(model.readingWordsProperty().get()).endsWith("; a thermometer 22.5 to 29.4 °C");
    }

    private static RoomView with(Extremes day) {
        BroodView brood = RoomFixture.broodA();
        BroodRecord known = brood.record().withExtremes(List.of(day));
        return RoomFixture.room(List.of(new BroodView(known, brood.trays(), brood.forecast())));
    }

    @Test
    void whatALoggerBesideTheDeskHearsIsShownWithWhoKeepsIt(FxRobot robot) {
        Reading reading = new Reading(RoomFixture.NOW, 25.6, Double.NaN, Quality.GOOD);
        LeftBeside taken = LeftBeside.NOTHING.and(
                List.of(new TakenBeside("P-8", List.of(new ReadingLog.Logged(reading, "25.6")))));
        robot.interact(() -> beside.set(taken));
        assertThat(model.probes())
                .filteredOn(row -> row.probe().equals("P-8"))
                .singleElement()
                .satisfies(row -> assertThat(row.reading()).isEqualTo("25.6 °C"))
                .satisfies(row -> assertThat(row.wire()).startsWith("heard by a logger beside the desk"));
        robot.interact(
                () -> beside.set(taken.waiting(new DeviceException(DeviceException.Reason.MISSING, "It waits."))));
        assertThat(model.probes())
                .filteredOn(row -> row.probe().equals("P-8"))
                .extracting(ProbeRow::wire)
                .singleElement()
                .asString()
                .startsWith("safe beside the store");
    }

    @Test
    void theJournalIsListedTheNewestFirst(FxRobot robot) {
        assertThat(model.journal()).extracting(JournalRow::what).contains("box 1 too warm, 30.4 °C");
        robot.interact(() -> invented.watch.acknowledge());
        assertThat(model.journal().get(0).what()).endsWith(": seen");
    }

    @Test
    void readingsThatCannotBeFetchedAreSaid(FxRobot robot) {
        log.broken = true;
        robot.interact(() -> model.spanProperty().set(TimeSpan.MONTH));
        assertThat(model.problemProperty().get()).isEqualTo("The readings cannot be shown: the disk is gone.");
        log.broken = false;
        robot.interact(() -> model.spanProperty().set(TimeSpan.DAY));
        assertThat(model.problemProperty().get()).isEmpty();
    }

    @Test
    void everyStateIsPictured(FxRobot robot) {
        ScreenShots.of("climate", 1188, 752, this::pictured);
        ScreenShots.of("climate-large", 1828, 1032, this::pictured);
        robot.interact(() -> room.set(
                with(new Extremes("box 1", RoomFixture.NOW.minus(Duration.ofHours(20)), RoomFixture.NOW, 22.5, 29.4))));
        ScreenShots.of("climate-frame", 1188, 752, this::pictured);
        robot.interact(() -> room.set(RoomView.EMPTY));
        ScreenShots.of("climate-empty", 1188, 752, this::pictured);
    }

    private ClimateView pictured(Appearance look) {
        ClimateViewModel shown = new ClimateViewModel(desk());
        shown.spanProperty().set(TimeSpan.MONTH);
        return new ClimateView(shown, look.paletteProperty(), new Group());
    }

    private TraceWindow window() {
        return model.traceProperty().get().orElseThrow().window();
    }

    private void note(String container, Optional<ColdestWall> wall) {
        walls.set(wall.map(said -> Map.of(container, said)).orElse(Map.of()));
    }

    private static MouseEvent moved(double x) {
        return new MouseEvent(
                MouseEvent.MOUSE_MOVED,
                x,
                100,
                x,
                100,
                MouseButton.NONE,
                0,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                false,
                null);
    }

    private static ScrollEvent scrolled(double x, double up) {
        return new ScrollEvent(
                ScrollEvent.SCROLL,
                x,
                100,
                x,
                100,
                false,
                false,
                false,
                false,
                false,
                false,
                0,
                up,
                0,
                up,
                ScrollEvent.HorizontalTextScrollUnits.NONE,
                0,
                ScrollEvent.VerticalTextScrollUnits.NONE,
                0,
                0,
                null);
    }

    private InstrumentDesk instruments() {
        InstantSource clock = InstantSource.fixed(RoomFixture.NOW);
        return new InstrumentDesk(
                store.climate(),
                new RecordCalibration(store.book(), store.climate(), store.readings(), clock, UUID::randomUUID),
                new NoteDisplay(store.book(), store.readings(), clock, UUID::randomUUID),
                new UndoDeed(store.book(), clock, UUID::randomUUID),
                () -> {},
                new InlineRunner(),
                (at, undo) -> {},
                clock,
                new DayWords(RoomFixture.ZONE));
    }

    private ClimateDesk desk() {
        return new ClimateDesk(
                room,
                log,
                invented.watch,
                invented.journal,
                invented.model.lastTurnProperty(),
                beside,
                new OneLine(),
                known,
                instruments(),
                new FinderDesk(wire, LineProfiles.bundled(), new OneLine(), new InlineRunner(), Runnable::run),
                new WallBook(walls, this::note),
                new PrinterPaper(
                        new PaperPrinter(
                                () -> {
                                    throw new AssertionError("no dialogue is shown where there is no printer");
                                },
                                new Printers(() -> false, Optional.empty())),
                        new PdfPicturePages(Paper.A4),
                        proposed -> Optional.of(folder.resolve(proposed))),
                new InlineRunner(),
                InlineRunner::new,
                Runnable::run,
                InstantSource.fixed(RoomFixture.NOW),
                new DayWords(RoomFixture.ZONE));
    }

    /** A wire on which one reading comes before it is told to end. */
    private final class OneLine implements ProbeLinks {
        @Override
        public List<String> profiles() {
            return List.of("plain-number", "key-value");
        }

        @Override
        public Link open(ProbeLine line, ProbeListener listener) {
            listener.changed(new LinkState.Live());
            listener.identified(SENSOR);
            listener.heard(new ReadingLog.Logged(new Reading(RoomFixture.NOW, 26.4, Double.NaN, Quality.GOOD), "26.4"));
            model.disconnect("P-9");
            return () -> {};
        }
    }

    private static final class MemoryLog implements ReadingLog {
        private final Map<String, ReadingSeries.Builder> appended = new TreeMap<>();
        private final ReadingSeries recorded = RoomFixture.readings();
        private final Map<String, ProbeIdentity> sensors = new TreeMap<>();
        private boolean broken;

        @Override
        public void identified(String probe, ProbeIdentity sensor, Instant from) {
            sensors.put(probe, sensor);
        }

        @Override
        public List<Logged> append(String probe, List<Logged> readings) {
            ReadingSeries.Builder builder = appended.computeIfAbsent(probe, code -> new ReadingSeries.Builder());
            readings.forEach(logged -> builder.add(logged.reading()));
            return readings;
        }

        @Override
        public ReadingSeries series(String probe, Instant from, Instant to) {
            if (broken) {
                throw new IllegalStateException("the disk is gone");
            }
            ReadingSeries.Builder live = appended.get(probe);
            return (live == null ? recorded : live.build()).between(from, to);
        }

        @Override
        public Map<String, Reading> latest() {
            return Map.of();
        }
    }
}

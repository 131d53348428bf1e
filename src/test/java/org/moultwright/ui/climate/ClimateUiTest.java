package org.moultwright.ui.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.DeviceException;
import org.moultwright.device.serial.KnownLinesFile;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.alarm.InventedWatch;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.LeftBeside;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TakenBeside;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class ClimateUiTest {
    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomFixture.room());
    private final InventedWatch invented = new InventedWatch().tooWarm(true);

    @TempDir
    private static Path folder;

    private final KnownLinesFile known = new KnownLinesFile(folder.resolve("probes.txt"));
    private final MemoryLog log = new MemoryLog();
    private final ObjectProperty<LeftBeside> beside = new SimpleObjectProperty<>(LeftBeside.NOTHING);
    private ClimateViewModel model;

    @Start
    void start(Stage stage) {
        Appearance appearance = new Appearance();
        model = new ClimateViewModel(desk());
        ClimateView view = new ClimateView(model, appearance.paletteProperty(), new Group());
        Scene scene = new Scene(view, 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        view.takeFocus();
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
        robot.interact(() -> room.set(RoomView.EMPTY));
        ScreenShots.of("climate-empty", 1188, 752, this::pictured);
    }

    private ClimateView pictured(Appearance look) {
        ClimateViewModel shown = new ClimateViewModel(desk());
        shown.spanProperty().set(TimeSpan.MONTH);
        return new ClimateView(shown, look.paletteProperty(), new Group());
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
            listener.heard(new ReadingLog.Logged(new Reading(RoomFixture.NOW, 26.4, Double.NaN, Quality.GOOD), "26.4"));
            model.disconnect("P-9");
            return () -> {};
        }
    }

    private static final class MemoryLog implements ReadingLog {
        private final Map<String, ReadingSeries.Builder> appended = new TreeMap<>();
        private final ReadingSeries recorded = RoomFixture.readings();
        private boolean broken;

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

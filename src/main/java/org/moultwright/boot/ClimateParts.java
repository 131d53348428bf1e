package org.moultwright.boot;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.boot.machine.SerialLines;
import org.moultwright.document.PdfPicturePages;
import org.moultwright.language.Texts;
import org.moultwright.settings.Settings;
import org.moultwright.store.H2Store;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.climate.ClimateDesk;
import org.moultwright.ui.climate.PrinterPaper;
import org.moultwright.ui.climate.WallBook;
import org.moultwright.ui.finder.FinderDesk;
import org.moultwright.ui.instrument.InstrumentDesk;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.KnownLines;
import org.moultwright.workflow.LeftBeside;
import org.moultwright.workflow.NoteDisplay;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.RecordCalibration;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.UndoDeed;

/**
 * Puts together what the climate screen works with.
 *
 * @param profiles the folder of the keeper's line profiles
 */
record ClimateParts(H2Store store, BroodBook book, Path profiles, InstantSource clock, Executor toolkit) {

    /** What is shown on the desk, where it is said that something was kept, and what saves and prints. */
    record Shown(
            ObservableObjectValue<RoomView> room,
            Runnable readAgain,
            SaveLine saveLine,
            DayWords days,
            DeskTools tools) {}

    /**
     * Who works aside.
     *
     * @param reading fetches readings
     * @param keeping keeps what the keeper enters
     * @param line gives a runner of its own to each wire
     */
    record Runners(Runner reading, Runner keeping, Supplier<? extends Runner> line) {}

    /** @param beside what loggers beside the desk have left for its store */
    ClimateDesk desk(
            Shown shown,
            DeskWatch watch,
            ObservableObjectValue<LeftBeside> beside,
            KnownLines known,
            SettingsViewModel settings,
            Runners runners) {
        SerialLines lines = new SerialLines(profiles);
        ProbeLinks links = lines.links();
        return new ClimateDesk(
                shown.room(),
                store.readings(),
                watch.watch(),
                store.alarms(),
                watch.model().lastTurnProperty(),
                beside,
                links,
                known,
                instruments(shown, runners),
                new FinderDesk(lines.wires(), lines.forms(), links, runners.keeping(), toolkit),
                new WallBook(settings.settingsProperty().map(Settings::walls), settings::wall),
                new PrinterPaper(
                        shown.tools().paperPrinter(),
                        new PdfPicturePages(shown.tools().paper()),
                        shown.tools().savesPdf(Texts.say("Save the trace"))),
                runners.reading(),
                runners.line()::get,
                toolkit,
                clock,
                shown.days());
    }

    private InstrumentDesk instruments(Shown shown, Runners runners) {
        Supplier<UUID> ids = UUID::randomUUID;
        return new InstrumentDesk(
                store.climate(),
                new RecordCalibration(book, store.climate(), store.readings(), clock, ids),
                new NoteDisplay(book, store.readings(), clock, ids),
                new UndoDeed(book, clock, ids),
                shown.readAgain(),
                runners.keeping(),
                shown.saveLine(),
                clock,
                shown.days());
    }
}

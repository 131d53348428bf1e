package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.exchange.DraftsFile;
import org.moultwright.exchange.SitterFile;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.store.StoreException;
import org.moultwright.task.Once;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.CalibratedBook;
import org.moultwright.workflow.KeptForecasts;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.SitterMode;
import org.moultwright.workflow.SittersBook;
import org.moultwright.workflow.WrittenRoom;

/**
 * What a desk rests on and needs no window for: its store, and the room as it was written, so that a desk shows its
 * trays from the first frame on. The store may be opened behind the desk. Made on any thread, as while the toolkit starts.
 *
 * @param left where the room is kept as it is left
 * @param begunSheets sheets of the round that were begun and not saved
 * @param forecasting made when the first forecast is asked for
 * @param broods all of the store
 * @param written the room without climates and dates; nothing if it could not be read, which the next reading tells
 */
record OpenedRoom(
        H2Store store,
        LeftRooms left,
        InstantSource clock,
        BegunFile<SheetDraft> begunSheets,
        Once<Forecasting> forecasting,
        SitterMode sitterMode,
        BroodBook book,
        Room room,
        List<Brood> broods,
        RoomView written) {
    private static final String SITTER = ".sitter";

    private static final String SHEETS_BEGUN = ".sheets";

    OpenedRoom {
        broods = List.copyOf(broods);
    }

    /**
     * Reads what is written.
     *
     * @param clock the keeper's now
     */
    static OpenedRoom of(H2Store store, InstantSource clock, SettingsFile settings, LeftRooms left) {
        return of(store, left, clock, settings, LeftRooms::written);
    }

    /**
     * Takes what is written as it was left, and opens nothing.
     *
     * @param clock the keeper's now
     */
    static OpenedRoom asLeft(LeftRooms.Found found, InstantSource clock, SettingsFile settings, LeftRooms left) {
        return of(found.store(), left, clock, settings, room -> Optional.of(found.room()));
    }

    private static OpenedRoom of(
            H2Store store,
            LeftRooms left,
            InstantSource clock,
            SettingsFile settings,
            Function<Room, Optional<WrittenRoom>> reading) {
        BegunFile<SheetDraft> begunSheets = BegunFile.readAside(DraftsFile.ofSheets(store.beside(SHEETS_BEGUN)));
        Once<Forecasting> forecasting =
                new Once<>(() -> Forecasting.of(new TimingsFile(settings.beside(TimingsFile.NAME))));
        SitterMode sitterMode = new SitterMode(new SitterFile(store.beside(SITTER), clock), clock);
        BroodBook book = new SittersBook(new CalibratedBook(store.book(), store.climate()), sitterMode);
        KeptForecasts forecasts =
                new KeptForecasts(question -> forecasting.get().prepared().apply(question), store.forecasts());
        Room room = new Room(book, store.readings(), forecasts);
        Optional<WrittenRoom> written = reading.apply(room);
        List<Brood> broods = written.map(OpenedRoom::broods).orElseGet(book::broods);
        RoomView shown = written.map(all -> all.at(clock.instant())).orElse(RoomView.EMPTY);
        return new OpenedRoom(store, left, clock, begunSheets, forecasting, sitterMode, book, room, broods, shown);
    }

    private static List<Brood> broods(WrittenRoom room) {
        return room.broods().stream().map(BroodRecord::brood).toList();
    }

    /**
     * Opens the store aside, if it is not open.
     *
     * @param whenRefused is told, on the thread that opens, why it cannot be opened
     */
    void openBehind(Consumer<RuntimeException> whenRefused) {
        if (!store.isDecided()) {
            Thread opening = new Thread(() -> open(whenRefused), "store opening");
            opening.setDaemon(true);
            opening.start();
        }
    }

    /** Returns once what was told to be kept can be, or never will be. */
    void awaitDecided() {
        open(refusal -> {});
    }

    /** Closes the store; the room is kept as it is left. */
    void close() {
        left.close(store, room);
    }

    private void open(Consumer<RuntimeException> whenRefused) {
        try {
            store.openNow();
        } catch (StoreException | UncheckedIOException refusal) {
            whenRefused.accept(refusal);
        }
    }
}

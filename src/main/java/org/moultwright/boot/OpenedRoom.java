package org.moultwright.boot;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Brood;
import org.moultwright.exchange.DraftsFile;
import org.moultwright.exchange.SitterFile;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.Once;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.CalibratedBook;
import org.moultwright.workflow.KeptForecasts;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.SitterMode;
import org.moultwright.workflow.SittersBook;

/**
 * What a desk rests on and needs no window for: its store, and the room as it was written, so that a desk shows its
 * trays from the first frame on. Made on any thread, as while the toolkit starts.
 *
 * @param begunSheets sheets of the round that were begun and not saved
 * @param forecasting made when the first forecast is asked for
 * @param broods all of the store
 * @param written the room without climates and dates; nothing if it could not be read, which the next reading tells
 */
record OpenedRoom(
        H2Store store,
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
    static OpenedRoom of(H2Store store, InstantSource clock, SettingsFile settings) {
        BegunFile<SheetDraft> begunSheets = BegunFile.readAside(DraftsFile.ofSheets(store.beside(SHEETS_BEGUN)));
        Once<Forecasting> forecasting =
                new Once<>(() -> Forecasting.of(new TimingsFile(settings.beside(TimingsFile.NAME))));
        SitterMode sitterMode = new SitterMode(new SitterFile(store.beside(SITTER), clock), clock);
        BroodBook book = new SittersBook(new CalibratedBook(store.book(), store.climate()), sitterMode);
        KeptForecasts forecasts =
                new KeptForecasts(question -> forecasting.get().prepared().apply(question), store.forecasts());
        Room room = new Room(book, store.readings(), forecasts);
        Optional<RoomView> written = written(room, clock);
        List<Brood> broods = written.map(OpenedRoom::broods).orElseGet(book::broods);
        return new OpenedRoom(
                store, clock, begunSheets, forecasting, sitterMode, book, room, broods, written.orElse(RoomView.EMPTY));
    }

    private static List<Brood> broods(RoomView room) {
        return room.broods().stream().map(view -> view.record().brood()).toList();
    }

    private static Optional<RoomView> written(Room room, InstantSource clock) {
        try {
            return Optional.of(room.glance(clock.instant()));
        } catch (RuntimeException unread) {
            return Optional.empty();
        }
    }
}

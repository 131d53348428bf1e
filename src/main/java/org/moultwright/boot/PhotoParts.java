package org.moultwright.boot;

import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableObjectValue;
import javafx.beans.value.ObservableValue;
import org.moultwright.exchange.PictureFolder;
import org.moultwright.task.BackgroundRunner;
import org.moultwright.task.Ticker;
import org.moultwright.text.DayWords;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.photo.PhotoOffers;
import org.moultwright.ui.photo.PhotoSheet;
import org.moultwright.ui.photo.Pictures;
import org.moultwright.workflow.AttachPhotos;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.OfferPictures;
import org.moultwright.workflow.PhotoFiles;

/** What photos need at the desk: their own thread to be read on, and an eye on the keeper's folder. */
final class PhotoParts implements PhotoOffers, AutoCloseable {
    private static final Duration PAUSE = Duration.ofSeconds(2);

    private final BackgroundRunner reader;
    private final OfferPictures offers;
    private final Executor toolkit;

    /** Kept, for a value nobody keeps is gone with its listeners. */
    private final ObservableValue<String> folder;

    /** Where to look, for the thread that looks. */
    private volatile String place;

    private final ReadOnlyObjectWrapper<List<Path>> offered = new ReadOnlyObjectWrapper<>(List.of());
    private final Ticker ticker;
    private final PhotoSheet sheet;
    private final PhotoDesk desk;

    /** @param folder the folder looked into, empty for none */
    PhotoParts(
            PhotoFiles files,
            BroodBook book,
            ObservableValue<String> folder,
            InstantSource clock,
            DayWords days,
            Executor toolkit) {
        this.toolkit = toolkit;
        this.reader = new BackgroundRunner("photos", toolkit);
        this.folder = folder;
        this.place = folder.getValue();
        this.folder.addListener((observed, before, now) -> place = now);
        this.offers = new OfferPictures(new PictureFolder(() -> place, InstantSource.system()), files);
        Pictures pictures = new Pictures(files::look, reader);
        this.sheet = new PhotoSheet(pictures, days);
        this.desk = new PhotoDesk(
                Optional.of(new AttachPhotos(book, files, clock, UUID::randomUUID)), pictures, this, sheet, days);
        this.ticker = new Ticker("new pictures", PAUSE, this::look);
    }

    PhotoDesk desk() {
        return desk;
    }

    /** Where large photos are seen, to be laid over the screens. */
    PhotoSheet sheet() {
        return sheet;
    }

    @Override
    public void close() {
        ticker.close();
        reader.close();
    }

    @Override
    public ObservableObjectValue<List<Path>> offered() {
        return offered.getReadOnlyProperty();
    }

    @Override
    public void decline(List<Path> pictures) {
        offers.decline(pictures);
        offered.set(offered.get().stream()
                .filter(picture -> !pictures.contains(picture))
                .toList());
    }

    @Override
    public void offerAgain(List<Path> pictures) {
        offers.offerAgain(pictures);
    }

    private void look() {
        List<Path> now = offers.offered();
        toolkit.execute(() -> {
            if (!now.equals(offered.get())) {
                offered.set(now);
            }
        });
    }
}

package org.moultwright.ui.round;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Parent;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.photo.PhotoOffers;
import org.moultwright.ui.photo.PhotoView;
import org.moultwright.ui.photo.Pictures;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PhotoException;

/** Photos of an invented room: shades painted by a rule, and one whose picture is lost. */
final class InventedPhotos {
    private static final int WIDTH = 640;
    private static final int HEIGHT = 480;
    private static final DayWords DAYS = new DayWords(ZoneOffset.UTC);

    private InventedPhotos() {}

    static InventedRoom room() {
        InventedRoom room = new InventedRoom();
        room.photos = desk();
        room.memory.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), "CC-26-A", InventedRoom.NOW, "A1, 3 photos"),
                Optional.empty(),
                Deed.Content.ofPhotos(photos())));
        room.readAgain();
        return room;
    }

    static Parent large() {
        PhotoDesk desk = desk();
        return new PhotoView(photos(), 1, desk.pictures(), desk.days(), () -> {});
    }

    private static List<PhotoNote> photos() {
        return List.of(photo('a', "lost.jpg"), photo('b', "IMG_0007.jpg"), photo('c', "IMG_0008.jpg"));
    }

    private static PhotoNote photo(char digit, String name) {
        return new PhotoNote(
                UUID.randomUUID(), InventedRoom.NOW, "A1", String.valueOf(digit).repeat(64) + ".jpg", name);
    }

    private static PhotoDesk desk() {
        return new PhotoDesk(
                Optional.empty(),
                new Pictures(InventedPhotos::paint, new InlineRunner()),
                new Two(),
                (photos, first) -> {},
                DAYS);
    }

    private static PagePicture paint(String file, int longestPixels) {
        if (file.startsWith("a")) {
            throw new PhotoException(
                    PhotoException.Reason.MISSING,
                    Texts.say("The picture is not in '{0}' any more.", "room.store.photos"));
        }
        int[] argb = new int[WIDTH * HEIGHT];
        for (int i = 0; i < argb.length; i++) {
            int shade = 60 + 120 * (i % WIDTH) / WIDTH;
            argb[i] = 0xFF000000 | (shade << 16) | ((shade / 2) << 8) | 40;
        }
        return new PagePicture(WIDTH, HEIGHT, argb);
    }

    private static final class Two implements PhotoOffers {
        private final ObservableObjectValue<List<Path>> two =
                new SimpleObjectProperty<>(List.of(Path.of("new 1.jpg"), Path.of("new 2.jpg")));

        @Override
        public ObservableObjectValue<List<Path>> offered() {
            return two;
        }

        @Override
        public void decline(List<Path> pictures) {}

        @Override
        public void offerAgain(List<Path> pictures) {}
    }
}

package org.moultwright.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.PhotoNote;
import org.moultwright.exchange.TableReader.Placed;
import org.moultwright.language.Texts;

/** The table of photos, and the folder of their pictures inside the brood's folder. */
final class PhotoRows {
    static final String FILE = "photos.csv";

    /** Where the pictures are, each under the name its row gives. */
    static final String PICTURES = "photos";

    private PhotoRows() {}

    static String place(PhotoNote photo) {
        return PICTURES + "/" + photo.file();
    }

    static Table<PhotoNote> table(RowIds ids) {
        return new Table<>(
                FILE,
                List.of("time", "tray", "picture", "name"),
                List.of("time", "tray", "picture"),
                PhotoNote::at,
                row -> read(row, ids),
                photo -> List.of(
                        Cell.instant(photo.at()),
                        Cell.text(photo.tray()),
                        Cell.text(photo.file()),
                        Cell.text(photo.name())));
    }

    /** Those whose pictures are in the folder; one that is not there is a notice, one that is another is a problem. */
    static List<PhotoNote> withPictures(List<Placed<PhotoNote>> rows, FolderFiles files, Problems problems) {
        List<PhotoNote> there = new ArrayList<>();
        for (Placed<PhotoNote> row : rows) {
            PhotoNote photo = row.value();
            try {
                Optional<InputStream> picture = files.open(place(photo));
                if (picture.isEmpty()) {
                    problems.notice("photos.csv: the picture '%s' is not in the folder; the photo was passed over"
                            .formatted(place(photo)));
                } else if (photo.file().startsWith(hash(picture.get()) + ".")) {
                    there.add(photo);
                } else {
                    problems.add(
                            FILE,
                            row.line(),
                            "picture",
                            photo.file(),
                            Texts.say("the SHA-256 of what is in the picture"));
                }
            } catch (IOException unreadable) {
                problems.add(
                        FILE,
                        row.line(),
                        "picture",
                        photo.file(),
                        Texts.say("a picture that can be read; {0}", unreadable.getMessage()));
            }
        }
        return there;
    }

    private static PhotoNote read(Row row, RowIds ids) throws Row.Unusable {
        Instant at = row.instant("time");
        String tray = row.required("tray");
        String picture = row.required("picture");
        if (!PhotoNote.isFile(picture)) {
            throw row.refuse("picture", Texts.say("a SHA-256 with an ending, such as .jpg"));
        }
        String name = row.text("name");
        return new PhotoNote(ids.of(FILE, at, tray, picture, name), at, tray, picture, name);
    }

    private static String hash(InputStream picture) throws IOException {
        try (DigestInputStream read = new DigestInputStream(picture, MessageDigest.getInstance("SHA-256"))) {
            read.transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(read.getMessageDigest().digest());
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }
}

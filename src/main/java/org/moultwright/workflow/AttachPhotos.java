package org.moultwright.workflow;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** Attaches photos to a tray. Those that cannot be kept are named, and hold up none of the others. */
public final class AttachPhotos {
    private final BroodBook book;
    private final PhotoFiles files;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public AttachPhotos(BroodBook book, PhotoFiles files, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.files = files;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * Keeps pictures and what tray they show; what is told as attached is on disk when this returns.
     *
     * @throws IllegalArgumentException if the brood or its tray is not in the book
     */
    public Attached attach(String brood, String tray, List<Offer> offers) {
        BroodRecord record = book.find(brood)
                .orElseThrow(() -> new IllegalArgumentException("brood '" + brood + "' is not in the book"));
        Require.that(
                record.ledger().entries().stream().anyMatch(entry -> entry.to().equals(Account.tray(tray))),
                "tray '" + tray + "' is not one of brood '" + brood + "'");
        Instant now = clock.instant();
        Set<String> there = record.photos().stream()
                .filter(photo -> photo.tray().equals(tray))
                .map(PhotoNote::file)
                .collect(Collectors.toCollection(HashSet::new));
        List<PhotoNote> photos = new ArrayList<>();
        List<Refusal> refused = new ArrayList<>();
        for (Offer offer : offers) {
            try {
                String file = offer.keep().apply(files);
                if (!there.add(file)) {
                    throw new PhotoException(
                            PhotoException.Reason.ALREADY_ATTACHED,
                            Texts.say("'{0}' is attached to {1} already.", offer.name(), tray));
                }
                photos.add(new PhotoNote(ids.get(), now, tray, file, offer.name()));
            } catch (PhotoException fault) {
                refused.add(new Refusal(offer.name(), fault));
            }
        }
        return new Attached(photos.isEmpty() ? Optional.empty() : Optional.of(keep(brood, tray, photos)), refused);
    }

    private Deed.Summary keep(String brood, String tray, List<PhotoNote> photos) {
        String words = Texts.count(photos.size(), "{0}, a photo", "{0}, {1} photos", tray, photos.size());
        Deed.Summary summary = new Deed.Summary(ids.get(), brood, clock.instant(), words);
        book.keep(new Deed(summary, Optional.empty(), Deed.Content.ofPhotos(photos)));
        return summary;
    }

    /**
     * A picture to be attached.
     *
     * @param name what it is called
     * @param keep keeps it, and says under which name
     */
    public record Offer(String name, Function<PhotoFiles, String> keep) {
        public static Offer of(Path file) {
            return new Offer(String.valueOf(file.getFileName()), files -> files.keep(file));
        }

        public static Offer of(PagePicture picture, String name) {
            return new Offer(name, files -> files.keep(picture, name));
        }
    }

    /** A picture that was not attached, and why. */
    public record Refusal(String name, PhotoException why) {
        /** Whether trying again can do no good. */
        public boolean isFinal() {
            return switch (why.reason()) {
                case DISK_FULL, NOT_WRITABLE, NOT_A_FILE -> false;
                case UNREADABLE, TOO_LARGE, MISSING, ALREADY_ATTACHED -> true;
            };
        }
    }

    /**
     * What came of it.
     *
     * @param deed what was kept, empty where none could be
     * @param refused the others, each with its reason
     */
    public record Attached(Optional<Deed.Summary> deed, List<Refusal> refused) {
        public Attached {
            refused = List.copyOf(refused);
        }
    }
}

package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.moultwright.domain.BeliefNote;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.ContainerMove;
import org.moultwright.domain.DisplayNote;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Require;

/**
 * All that the keeper wrote down of one brood, or of the room's instruments and climate, or of pots whatever their broods,
 * at one go. It is kept whole or not at all, and undone whole.
 *
 * @param summary what was done, in a few words, for the list of what can be undone
 * @param undoes the deed this one takes back, if it is an undoing
 */
public record Deed(Summary summary, Optional<UUID> undoes, Content content) {
    public Deed {
        Require.that(
                summary.brood().isPresent() ? content.isOfBrood() : content.isOfRoom(),
                "a deed is about a brood or about the room, not both");
    }

    /**
     * How a deed is named and listed.
     *
     * @param id names the deed for ever
     * @param brood the code of the brood it is about, empty where it is about the room or its pots
     * @param doneAt when the keeper wrote it down, by the clock of this machine
     * @param words what was done, such as "A1 counted"
     */
    public record Summary(UUID id, Optional<String> brood, Instant doneAt, String words) {
        public Summary {
            brood.ifPresent(code -> Require.text("brood", code));
            Require.text("words", words);
        }

        public Summary(UUID id, String brood, Instant doneAt, String words) {
            this(id, Optional.of(brood), doneAt, words);
        }
    }

    /** The rows of a deed; any list may be empty. Containers are moved by deeds of either sort. */
    public record Content(
            List<LedgerEntry> entries,
            List<Check> checks,
            List<MouldNote> mould,
            List<CareNote> care,
            List<Pot> pots,
            List<BeliefNote> beliefs,
            List<LessonNote> lessons,
            List<Calibration> calibrations,
            List<DisplayNote> displays,
            ClimateWriting climate,
            List<ContainerMove> moves,
            List<PotChanges> potChanges,
            SacWriting sac,
            List<PhotoNote> photos) {
        public static final Content NOTHING = new Content(List.of(), List.of(), List.of(), List.of(), List.of());

        public Content {
            entries = List.copyOf(entries);
            checks = List.copyOf(checks);
            mould = List.copyOf(mould);
            care = List.copyOf(care);
            pots = List.copyOf(pots);
            beliefs = List.copyOf(beliefs);
            lessons = List.copyOf(lessons);
            calibrations = List.copyOf(calibrations);
            displays = List.copyOf(displays);
            moves = List.copyOf(moves);
            potChanges = List.copyOf(potChanges);
            photos = List.copyOf(photos);
        }

        /** The rows of a deed about a brood. */
        public Content(
                List<LedgerEntry> entries,
                List<Check> checks,
                List<MouldNote> mould,
                List<CareNote> care,
                List<Pot> pots) {
            this(
                    entries,
                    checks,
                    mould,
                    care,
                    pots,
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    ClimateWriting.NOTHING,
                    List.of(),
                    List.of(),
                    SacWriting.NOTHING,
                    List.of());
        }

        /** What a keeper came to believe of a brood's timing, or of what is to be learned from it. */
        public static Content ofBeliefs(List<BeliefNote> beliefs, List<LessonNote> lessons) {
            return NOTHING.with(parts -> {
                parts.beliefs = beliefs;
                parts.lessons = lessons;
            });
        }

        /** The rows of a deed about the room's instruments. */
        public static Content ofRoom(List<Calibration> calibrations, List<DisplayNote> displays) {
            return ofRoom(calibrations, displays, ClimateWriting.NOTHING);
        }

        /** The rows of a deed about the room's climate. */
        public static Content ofClimate(ClimateWriting climate) {
            return ofRoom(List.of(), List.of(), climate);
        }

        /** All rows of a deed about the room. */
        public static Content ofRoom(
                List<Calibration> calibrations, List<DisplayNote> displays, ClimateWriting climate) {
            return NOTHING.with(parts -> {
                parts.calibrations = calibrations;
                parts.displays = displays;
                parts.climate = climate;
            });
        }

        /** The rows of a deed that moves containers and nothing else. */
        public static Content ofMoves(List<ContainerMove> moves) {
            return NOTHING.withMoves(moves);
        }

        /** These rows and moves of containers. */
        public Content withMoves(List<ContainerMove> others) {
            return with(parts -> parts.moves = others);
        }

        /** Pots of any broods and what happened to them, and nothing else. */
        public static Content ofPots(List<PotChanges> changes) {
            return NOTHING.withPotChanges(changes);
        }

        /** These rows and what happened to pots. */
        public Content withPotChanges(List<PotChanges> others) {
            return with(parts -> parts.potChanges = others);
        }

        /** These rows and what is written of the sac. */
        public Content withSac(SacWriting other) {
            return with(parts -> parts.sac = other);
        }

        /** Photos of trays, and nothing else. */
        public static Content ofPhotos(List<PhotoNote> photos) {
            return NOTHING.withPhotos(photos);
        }

        /** These rows and photos of trays. */
        public Content withPhotos(List<PhotoNote> others) {
            return with(parts -> parts.photos = others);
        }

        private Content with(Consumer<Parts> change) {
            Parts parts = new Parts(this);
            change.accept(parts);
            return parts.content();
        }

        private boolean isOfBrood() {
            return calibrations.isEmpty() && displays.isEmpty() && climate.isNothing() && potChanges.isEmpty();
        }

        private boolean isOfRoom() {
            return sac.isNothing()
                    && Stream.of(entries, checks, mould, care, pots, beliefs, lessons, photos)
                            .allMatch(List::isEmpty);
        }

        /** Every pot that came to be. */
        public Stream<Pot> allPots() {
            return Stream.concat(pots.stream(), potChanges.stream().flatMap(changes -> changes.pots().stream()));
        }

        public static Content ofEntries(List<LedgerEntry> entries) {
            return new Content(entries, List.of(), List.of(), List.of(), List.of());
        }

        /** The parts of some rows while one or another is replaced. */
        private static final class Parts {
            private List<LedgerEntry> entries;
            private List<Check> checks;
            private List<MouldNote> mould;
            private List<CareNote> care;
            private List<Pot> pots;
            private List<BeliefNote> beliefs;
            private List<LessonNote> lessons;
            private List<Calibration> calibrations;
            private List<DisplayNote> displays;
            private ClimateWriting climate;
            private List<ContainerMove> moves;
            private List<PotChanges> potChanges;
            private SacWriting sac;
            private List<PhotoNote> photos;

            Parts(Content from) {
                entries = from.entries;
                checks = from.checks;
                mould = from.mould;
                care = from.care;
                pots = from.pots;
                beliefs = from.beliefs;
                lessons = from.lessons;
                calibrations = from.calibrations;
                displays = from.displays;
                climate = from.climate;
                moves = from.moves;
                potChanges = from.potChanges;
                sac = from.sac;
                photos = from.photos;
            }

            Content content() {
                return new Content(
                        entries,
                        checks,
                        mould,
                        care,
                        pots,
                        beliefs,
                        lessons,
                        calibrations,
                        displays,
                        climate,
                        moves,
                        potChanges,
                        sac,
                        photos);
            }
        }
    }
}

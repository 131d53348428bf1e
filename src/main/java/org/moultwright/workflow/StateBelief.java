package org.moultwright.workflow;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.BeliefNote;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Timing;
import org.moultwright.language.Texts;

/** Writes down what a keeper believes of a brood's timing, and which broods are to teach. Undone like any deed. */
public final class StateBelief {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public StateBelief(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /**
     * Keeps what is believed of a brood; it is on disk when this returns.
     *
     * @param timing empty where nothing is believed any more: the assumption for the species holds then
     */
    public Deed.Summary believe(String brood, Optional<Timing> timing) {
        BeliefNote note = new BeliefNote(ids.get(), clock.instant(), timing);
        return keep(
                brood,
                timing.isPresent()
                        ? Texts.say("{0}: timing believed", brood)
                        : Texts.say("{0}: no timing believed", brood),
                Deed.Content.ofBeliefs(List.of(note), List.of()));
    }

    /** Keeps that nothing is to be learned from a completed brood, with the reason, possibly empty. */
    public Deed.Summary leaveOut(String brood, String reason) {
        return keep(brood, Texts.say("{0} left out of learning", brood), lesson(brood, true, reason));
    }

    /** Keeps that a completed brood teaches again. */
    public Deed.Summary learnAgain(String brood) {
        return keep(brood, Texts.say("{0} learned from again", brood), lesson(brood, false, ""));
    }

    private Deed.Content lesson(String brood, boolean isLeftOut, String reason) {
        LessonNote note = new LessonNote(ids.get(), brood, clock.instant(), isLeftOut, reason.strip());
        return Deed.Content.ofBeliefs(List.of(), List.of(note));
    }

    private Deed.Summary keep(String brood, String words, Deed.Content content) {
        Deed.Summary summary = new Deed.Summary(ids.get(), brood, clock.instant(), words);
        book.keep(new Deed(summary, Optional.empty(), content));
        return summary;
    }
}

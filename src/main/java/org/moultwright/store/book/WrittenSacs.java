package org.moultwright.store.book;

import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Require;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.SacWriting;

/** What was written of sacs at the desk before they were opened. */
final class WrittenSacs {
    private final BroodTable broods;
    private final RunUpTable runUp;
    private final PullTable pulls = new PullTable();

    WrittenSacs(BroodTable broods, RunUpTable runUp) {
        this.broods = broods;
        this.runUp = runUp;
    }

    /** The brood a deed begins, before the deed that names it. */
    void begin(Handle handle, Deed deed) {
        deed.content().sac().begun().ifPresent(brood -> {
            Require.that(
                    deed.summary().brood().filter(brood.code()::equals).isPresent(),
                    "a deed that begins brood '" + brood.code() + "' is about another");
            Require.that(
                    broods.find(handle, brood.code()).isEmpty(),
                    "code '" + brood.code() + "' is taken by another brood");
            broods.insert(handle, brood, Optional.of(deed.summary().id()));
        });
    }

    void insert(Handle handle, String brood, UUID deed, SacWriting writing) {
        pulls.insert(handle, brood, Optional.of(deed), writing.pulls());
        runUp.insert(handle, brood, Optional.of(deed), writing.runUp());
    }

    SacWriting ofDeed(Handle handle, String brood, UUID deed) {
        return new SacWriting(
                broods.begunBy(handle, deed), pulls.ofDeed(handle, brood, deed), runUp.ofDeed(handle, brood, deed));
    }
}

package org.moultwright.store;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.moultwright.language.Texts;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.sql.Transactions;

/**
 * Transactions of a database that may be opened later. Whoever asks before waits for it, interrupted or not; if it cannot
 * be opened, each is told why.
 */
final class AwaitedTransactions implements Transactions {
    private final CompletableFuture<H2Transactions> awaited = new CompletableFuture<>();

    /** Says that the database is open; one that was closed meanwhile is let go of. */
    void are(H2Transactions opened) {
        if (!awaited.complete(opened)) {
            opened.close();
            opened();
        }
    }

    /** Says that it cannot be opened. */
    void areRefused(RuntimeException refusal) {
        awaited.completeExceptionally(refusal);
    }

    /** Whether it is open, or never will be. */
    boolean areDecided() {
        return awaited.isDone();
    }

    /** Those of the database, once it is open. */
    H2Transactions opened() {
        try {
            return awaited.join();
        } catch (CompletionException refusal) {
            throw Faults.unchecked(refusal.getCause());
        }
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        return opened().read(work);
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        return opened().write(work);
    }

    /**
     * Lets what was begun end, then lets go of the file; what was never opened is not opened any more.
     *
     * @return false if this was done before, or there was nothing to let go of
     */
    boolean close() {
        areRefused(new StoreException(Reason.FAILED, Texts.say("The store is already closed.")));
        return !awaited.isCompletedExceptionally() && opened().close();
    }
}

package org.moultwright.boot;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.store.H2Store;
import org.moultwright.store.StoreException;
import org.moultwright.task.Ticker;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.LeftBeside;
import org.moultwright.workflow.TakenBeside;

/** Takes in what loggers leave beside the desk's store while it is open; the watch hears it, and the screens show it. */
final class DeskIntake implements AutoCloseable {
    private static final Duration PAUSE = Duration.ofSeconds(1);

    private final H2Store store;
    private final KeepWatch watch;
    private final Executor toolkit;
    private final ReadOnlyObjectWrapper<LeftBeside> beside = new ReadOnlyObjectWrapper<>(LeftBeside.NOTHING);
    private final Ticker ticker;
    private LeftBeside known = LeftBeside.NOTHING;

    DeskIntake(H2Store store, KeepWatch watch, Executor toolkit) {
        this.store = store;
        this.watch = watch;
        this.toolkit = toolkit;
        this.ticker = new Ticker("store intake", PAUSE, this::takeIn);
    }

    /** What is taken in so far, on the toolkit's thread. */
    ReadOnlyObjectProperty<LeftBeside> besideProperty() {
        return beside.getReadOnlyProperty();
    }

    @Override
    public void close() {
        ticker.close();
    }

    private void takeIn() {
        LeftBeside now;
        try {
            List<TakenBeside> taken = store.takeInSpools();
            now = taken.isEmpty() && known.waits().isEmpty() ? known : known.and(taken);
            taken.forEach(this::hear);
        } catch (StoreException fault) {
            now = known.waits().isPresent() ? known : known.waiting(fault);
        }
        if (!now.equals(known)) {
            known = now;
            LeftBeside shown = now;
            toolkit.execute(() -> beside.set(shown));
        }
    }

    private void hear(TakenBeside taken) {
        watch.begin(taken.probe());
        taken.readings().forEach(logged -> watch.heard(taken.probe(), logged.reading()));
    }
}

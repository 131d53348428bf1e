package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.task.Outcome;

/** The alarm journal of the last weeks, the newest line first; fetched aside, anew with every line written. */
final class JournalModel {
    private static final Duration SHOWN = Duration.ofDays(30);

    private final ClimateDesk desk;
    private final ObservableList<JournalRow> rows = FXCollections.observableArrayList();
    private final ChangeListener<Optional<AlarmEntry>> whenTurned = (observed, before, now) -> fetch();

    JournalModel(ClimateDesk desk) {
        this.desk = desk;
        desk.lastTurn().addListener(new WeakChangeListener<>(whenTurned));
        fetch();
    }

    ObservableList<JournalRow> rows() {
        return rows;
    }

    private void fetch() {
        Instant now = desk.clock().instant();
        desk.runner().run(progress -> desk.journal().between(now.minus(SHOWN), now.plusMillis(1)), outcome -> {
            // A journal that cannot be read leaves what is shown; the banner says that the store fails.
            if (outcome instanceof Outcome.Done<List<AlarmEntry>> done) {
                show(done.value());
            }
        });
    }

    private void show(List<AlarmEntry> entries) {
        List<AlarmEntry> newestFirst = new ArrayList<>(entries);
        Collections.reverse(newestFirst);
        rows.setAll(newestFirst.stream()
                .map(entry -> JournalRow.of(entry, desk.days()))
                .toList());
    }
}

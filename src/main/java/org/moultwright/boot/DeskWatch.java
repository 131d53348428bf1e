package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.time.InstantSource;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import org.moultwright.boot.machine.AlarmCommand;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.settings.Settings;
import org.moultwright.store.H2Store;
import org.moultwright.task.Runner;
import org.moultwright.task.Ticker;
import org.moultwright.text.DayWords;
import org.moultwright.ui.alarm.AlarmDesk;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.alarm.AlarmViewModel;
import org.moultwright.ui.shell.TopLine;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.ClimateBook;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.WatchListener;
import org.moultwright.workflow.WatchPlaces;
import org.moultwright.workflow.WatchView;

/** The watch of a desk: kept aside, shown above every screen, heard unless the keeper has muted it. */
final class DeskWatch implements AutoCloseable {
    private final ObservableValue<Settings> settings;
    private final Executor toolkit;
    private final AlarmReach reach;
    private final Consumer<UncheckedIOException> commandFailed;
    private final ClimateBook climate;
    private final KeepWatch watch;
    private final AlarmViewModel model;
    private final Ticker ticker;
    private WatchView stands = WatchView.NOTHING;

    /**
     * @param reach how alarms reach somebody who does not look at the desk
     * @param commandFailed is told, on the toolkit's thread, that the command for alarms could not be run
     */
    DeskWatch(
            H2Store store,
            InstantSource clock,
            DayWords days,
            ObservableValue<Settings> settings,
            Runner keeper,
            Executor toolkit,
            AlarmReach reach,
            Consumer<UncheckedIOException> commandFailed) {
        this.commandFailed = commandFailed;
        this.settings = settings;
        this.toolkit = toolkit;
        this.reach = reach;
        this.climate = store.climate();
        this.watch = new KeepWatch(
                store.alarms(),
                store.readings(),
                clock,
                System::nanoTime,
                UUID::randomUUID,
                WatchPlaces.NONE,
                settings.getValue().alarms().limits(),
                new Told());
        this.model = new AlarmViewModel(
                new AlarmDesk(watch::acknowledge, watch::snooze, keeper, this::ring, System::nanoTime, clock, days));
        this.ticker = new Ticker("watch", KeepWatch.USUAL_TICK, watch::tick);
    }

    KeepWatch watch() {
        return watch;
    }

    AlarmViewModel model() {
        return model;
    }

    /** What is watched says now. Lives on the toolkit's thread. */
    List<WatchView.Place> heard() {
        return stands.places();
    }

    /** The same of places where a probe measured. */
    List<TopLine.ProbeNow> measured() {
        return heard().stream()
                .flatMap(place ->
                        place.heardAt().map(at -> new TopLine.ProbeNow(place.name(), place.celsius(), at)).stream())
                .toList();
    }

    /** Follows what was written of places, calibrations and set-points, and the keeper's limits. Not on the toolkit's thread. */
    void follow(RoomView room) {
        watch.follow(
                WatchPlaces.of(room.broods().stream().map(BroodView::record).toList())
                        .withWalls(settings.getValue().watchedWalls(), climate.calibrations()),
                settings.getValue().alarms().limits());
    }

    @Override
    public void close() {
        ticker.close();
    }

    private void ring() {
        if (settings.getValue().alarms().isHeard()) {
            reach.ring();
        }
    }

    private void run(AlarmCommand command, AlarmEntry entry) {
        try {
            command.answer(entry);
        } catch (UncheckedIOException fault) {
            toolkit.execute(() -> commandFailed.accept(fault));
        }
    }

    private final class Told implements WatchListener {
        @Override
        public void turned(AlarmEntry entry) {
            toolkit.execute(() -> model.turned(entry));
            if (settings.getValue().alarms().isNoticed()) {
                reach.notice(entry);
            }
            String command = settings.getValue().alarms().command();
            if (!command.isBlank()) {
                run(new AlarmCommand(command), entry);
            }
        }

        @Override
        public void stands(WatchView view) {
            toolkit.execute(() -> {
                stands = view;
                model.show(view);
            });
        }
    }
}

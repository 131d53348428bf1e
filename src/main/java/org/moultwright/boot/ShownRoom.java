package org.moultwright.boot;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.ui.shell.TopLineReader;
import org.moultwright.workflow.RoomReading;
import org.moultwright.workflow.RoomView;

/** The room as a desk shows it: read aside, and anew whenever something was written. Lives on the toolkit's thread. */
final class ShownRoom {
    private final OpenedRoom opened;
    private final Runner runner;
    private final DeskWatch watch;
    private final ShellViewModel shell;
    private final SettingsViewModel settings;
    private final DayWords days;
    private final ReadOnlyObjectWrapper<RoomView> dated = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);
    private final ReadOnlyObjectWrapper<RoomView> written;
    private final DeskTools.Shown shown;

    /**
     * @param watch follows what was read
     * @param shell where what matters now is told, and what could not be read
     */
    ShownRoom(
            OpenedRoom opened,
            Runner runner,
            DeskWatch watch,
            ShellViewModel shell,
            SettingsViewModel settings,
            DayWords days) {
        this.opened = opened;
        this.runner = runner;
        this.watch = watch;
        this.shell = shell;
        this.settings = settings;
        this.days = days;
        this.written = new ReadOnlyObjectWrapper<>(opened.written());
        this.shown = new DeskTools.Shown(dated.getReadOnlyProperty(), written.getReadOnlyProperty(), this::readAgain);
    }

    /** What screens see of it. */
    DeskTools.Shown shown() {
        return shown;
    }

    /**
     * What a desk reads once it is seen: first, whether the keeper's own timings hold, told whether or not there is
     * anything to date; then the room.
     */
    void readFirst() {
        runner.run(progress -> opened.forecasting().get().assumed().problem(), outcome -> {
            if (outcome instanceof Outcome.Done<Optional<String>> read) {
                read.value()
                        .ifPresent(problem ->
                                shell.tell(Tone.WARN, Texts.say("Your own timings of species are not used."), problem));
            }
        });
        readAgain();
    }

    /** Asks for the room to be read anew, aside; every screen shows it once it is there. */
    void readAgain() {
        List<RoomReading<?>> readings =
                DeskScreens.readings(settings.vocabularyProperty().get(), days);
        runner.run(
                progress -> {
                    RoomView read = opened.room().at(opened.clock().instant());
                    watch.follow(read);
                    readings.forEach(reading -> reading.of(read));
                    return read;
                },
                this::show);
    }

    private void show(Outcome<RoomView> outcome) {
        if (outcome instanceof Outcome.Done<RoomView> done) {
            dated.set(done.value());
            written.set(done.value());
            shell.show(
                    TopLineReader.read(
                            done.value(), days, settings.vocabularyProperty().get()),
                    opened.clock().instant());
        } else if (outcome instanceof Outcome.Failed<RoomView> failed) {
            shell.tell(
                    Tone.BAD,
                    Texts.say("The room could not be read."),
                    String.valueOf(failed.fault().getMessage()));
        }
    }
}

package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.scene.Parent;
import javafx.scene.layout.Region;
import javafx.stage.Window;
import org.moultwright.boot.machine.AlarmCommand;
import org.moultwright.device.serial.KnownLinesFile;
import org.moultwright.domain.Brood;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.BackgroundRunner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.climate.ClimateScreen;
import org.moultwright.ui.control.Ageing;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.deeds.DeedsDesk;
import org.moultwright.ui.deeds.DeedsSheet;
import org.moultwright.ui.intake.Intake;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.settings.SettingsScreen;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.shell.Backstage;
import org.moultwright.ui.shell.LaterScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ShellView;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.ui.takealong.SitterViewModel;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.KnownLines;
import org.moultwright.workflow.RoomView;

/** The whole desk over one store, put together by hand. Lives on the toolkit's thread. */
final class Workbench implements AutoCloseable {
    /** Where a desk without broods opens: all ways to one are there. */
    private static final String WHERE_BROODS_COME_IN = "broods";

    private static final String PROBES = "probes.txt";

    private static final String PROFILES = "profiles";

    private final OpenedRoom opened;
    private final Executor toolkit;
    private final Appearance appearance = new Appearance();
    private final DeskRunners runners;
    private final ShownRoom room;
    private final Optional<DemoDoor> demoDoor;
    private final ShellViewModel shell;
    private final DeskWatch watch;
    private final DeskIntake beside;
    private final PhotoParts photos;
    private final ClimateScreen climate;
    private final List<Screen> screens;
    private final ShellView view;
    private final Parent whole;
    private Consumer<RuntimeException> whenRefused = refusal -> {};

    /**
     * @param opened what it shows and keeps; its store is closed with the desk
     * @param toolkit runs something on the toolkit's thread
     * @param demoDoor leads to the demo room, closed with the desk; empty where this is it
     * @param reach how alarms reach somebody who does not look at the desk
     */
    Workbench(OpenedRoom opened, SettingsFile file, Executor toolkit, Optional<DemoDoor> demoDoor, AlarmReach reach) {
        this.opened = opened;
        this.toolkit = toolkit;
        H2Store store = opened.store();
        this.demoDoor = demoDoor;
        this.runners = new DeskRunners(toolkit);
        DayWords days = new DayWords(zoneOf(opened.broods()));
        this.shell = new ShellViewModel(days);
        SettingsFile.Loaded loaded = file.load();
        SettingsViewModel settings = new SettingsViewModel(loaded.settings(), file::save, runners.reading());
        BackgroundRunner keeper = runners.others().keeper();
        settings.settingsProperty().addListener((observed, before, now) -> dress(now));
        dress(loaded.settings());
        loaded.keptAside().ifPresent(this::tellOfSettings);
        this.watch = new DeskWatch(
                store, opened.clock(), days, settings.settingsProperty(), keeper, toolkit, reach, this::commandFailed);
        this.room = new ShownRoom(opened, runners.reading(), watch, shell, settings, days);
        DeskTools tools = new DeskTools(opened, room.shown(), runners.others(), shell, settings, days, this::window);
        this.beside = new DeskIntake(store, watch.watch(), toolkit);
        Intake writeIn = new IntakeParts(tools).intake();
        ClimateParts parts = new ClimateParts(store, opened.book(), file.beside(PROFILES), opened.clock(), toolkit);
        this.climate = ClimateScreen.of(
                parts.desk(
                        new ClimateParts.Shown(room.shown().room(), room::readAgain, shell, days, tools),
                        watch,
                        beside.besideProperty(),
                        known(file),
                        settings,
                        new ClimateParts.Runners(runners.reading(), keeper, runners::line)),
                appearance.paletteProperty(),
                writeIn.menu());
        this.photos = new PhotoParts(
                store.photos(),
                opened.book(),
                settings.settingsProperty().map(chosen -> chosen.desk().photoFolder()),
                opened.clock(),
                days,
                toolkit);
        PlanChoices plans = new PlanChoices(settings.settingsProperty().map(Settings::plans), settings::choose);
        RoundParts round = new RoundParts(tools);
        SitterViewModel sitter = new SitterViewModel(round.sitter(plans, watch.model()));
        this.screens = new DeskScreens(tools, watch::heard, photos.desk(), demoDoor, writeIn, climate)
                .inOrder(round, new ForecastParts(tools, plans, sitter), appearance.paletteProperty());
        this.view = new ShellView(
                shell,
                watch.model(),
                screens,
                new LaterScreen(
                        SettingsScreen.NAME,
                        () -> new SettingsScreen(
                                settings,
                                reach,
                                command -> new AlarmCommand(command).tryOut(),
                                new Translations(file.beside(DeskLanguage.FOLDER)))),
                new DeedsSheet(new DeedsDesk(tools.undo(), this::takenBack, keeper, days)),
                List.of(photos.sheet()));
        Ageing.whileSeen(view, () -> shell.age(watch.measured(), opened.clock().instant()));
        this.whole = new SitterParts(sitter, view, this::putHandsBack);
        if (opened.broods().isEmpty()) {
            open(WHERE_BROODS_COME_IN);
        }
    }

    Parent view() {
        return whole;
    }

    Appearance appearance() {
        return appearance;
    }

    List<Screen> screens() {
        return screens;
    }

    /** What a keeper can do without for the first key. */
    List<Region> canWait() {
        return view.canWait();
    }

    /** Where the screens are made ready that were not opened yet; asked for once the desk stands in its window. */
    Backstage backstage() {
        return view.backstage();
    }

    void open(String screenId) {
        shell.currentProperty().set(screenId);
    }

    /** The room as the round shows it: as it was written at first, with its dates once they are worked out. */
    ReadOnlyObjectProperty<RoomView> roundRoomProperty() {
        return room.shown().written();
    }

    /** The room with its dates. */
    ReadOnlyObjectProperty<RoomView> roomProperty() {
        return room.shown().room();
    }

    /** @param told why the store cannot be opened, where it is opened behind the desk */
    void whenRefused(Consumer<RuntimeException> told) {
        whenRefused = told;
    }

    /** What the desk reads once it is seen; the store is opened first, if it was not. */
    void readFirst() {
        opened.openBehind(refusal -> toolkit.execute(() -> whenRefused.accept(refusal)));
        room.readFirst();
    }

    /** Asks for the room to be read anew, aside; every screen shows it once it is there. */
    void readAgain() {
        room.readAgain();
    }

    /**
     * Waits for the store, if it is still being opened: what was entered meanwhile is to be in it. Then ends every link
     * first: what a probe said until now is to be on disk before the store is closed.
     */
    @Override
    public void close() {
        opened.awaitDecided();
        demoDoor.ifPresent(DemoDoor::close);
        climate.close();
        runners.finishLines();
        watch.close();
        beside.close();
        photos.close();
        runners.finish();
        opened.close();
    }

    private void putHandsBack() {
        screens.stream()
                .filter(screen ->
                        screen.name().id().equals(shell.currentProperty().get()))
                .forEach(Screen::shown);
    }

    private void takenBack() {
        shell.forget();
        readAgain();
    }

    /** The demo room listens to nothing of this machine. */
    private KnownLines known(SettingsFile file) {
        return demoDoor.isPresent() ? new KnownLinesFile(file.beside(PROBES)) : KnownLines.NONE;
    }

    private Window window() {
        return view.getScene().getWindow();
    }

    private void dress(Settings chosen) {
        appearance.themeProperty().set(chosen.theme());
        appearance.textSizeProperty().set(chosen.textSize());
    }

    /** Tells that the language chosen could not be spoken, and why. */
    void tellOfLanguage(String problem) {
        shell.tell(Tone.WARN, Texts.say("The translation is not understood, so the desk speaks English."), problem);
    }

    private void tellOfSettings(Path aside) {
        shell.tell(
                Tone.WARN,
                Texts.say("The settings were not understood, so the usual ones hold."),
                Texts.say("They are kept in {0}.", aside));
    }

    private void commandFailed(UncheckedIOException fault) {
        shell.tell(Tone.BAD, Texts.say("The command for alarms could not be run."), String.valueOf(fault.getMessage()));
    }

    /** The zone of the keeper's broods; that of this machine before there is any. */
    private static ZoneId zoneOf(List<Brood> broods) {
        return broods.isEmpty()
                ? ZoneId.systemDefault()
                : broods.get(broods.size() - 1).zone();
    }
}

package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Parent;
import javafx.stage.Window;
import org.moultwright.boot.machine.AlarmCommand;
import org.moultwright.boot.machine.TallyNotes;
import org.moultwright.device.serial.KnownLinesFile;
import org.moultwright.domain.Brood;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.BackgroundRunner;
import org.moultwright.task.Outcome;
import org.moultwright.text.DayWords;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.broods.BroodsScreen;
import org.moultwright.ui.climate.ClimateScreen;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.deeds.DeedsDesk;
import org.moultwright.ui.deeds.DeedsSheet;
import org.moultwright.ui.forecast.ForecastScreen;
import org.moultwright.ui.intake.Intake;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.potting.PottingScreen;
import org.moultwright.ui.register.RegisterScreen;
import org.moultwright.ui.round.RoundDesk;
import org.moultwright.ui.round.RoundScreen;
import org.moultwright.ui.settings.SettingsScreen;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.shelf.ShelfDesk;
import org.moultwright.ui.shelf.ShelfScreen;
import org.moultwright.ui.shell.Backstage;
import org.moultwright.ui.shell.LaterScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ShellView;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.ui.shell.TopLineReader;
import org.moultwright.ui.takealong.SitterDesk;
import org.moultwright.ui.takealong.SitterViewModel;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Palette;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.KnownLines;
import org.moultwright.workflow.RecordRound;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.SitterDeeds;

/** The whole desk over one store, put together by hand. Lives on the toolkit's thread. */
final class Workbench implements AutoCloseable {
    /** Where a desk without broods opens: all ways to one are there. */
    private static final String WHERE_BROODS_COME_IN = "broods";

    private static final String PROBES = "probes.txt";

    private static final String PROFILES = "profiles";

    /** How long a link may take to end; opening a port that does not answer takes longest. */
    private static final Duration LONGEST_ENDING = Duration.ofSeconds(5);

    private final H2Store store;
    private final InstantSource clock;
    private final Room room;
    private final ReadOnlyObjectWrapper<RoomView> roomView = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);

    private final ReadOnlyObjectWrapper<RoomView> roundRoom;

    private final Appearance appearance = new Appearance();
    private final BackgroundRunner runner;

    private final DeskTools.Runners runners;
    private final DeskTools tools;
    private final OpenedRoom opened;
    private final Executor toolkit;
    private final Optional<DemoDoor> demoDoor;
    private final ShellViewModel shell;
    private final SettingsViewModel settings;
    private final DayWords days;
    private final DeskWatch watch;
    private final DeskIntake beside;
    private final SitterViewModel sitter;
    private final PhotoParts photos;

    /** The demo room listens to nothing of this machine. */
    private final KnownLines known;

    private final ClimateScreen climate;

    /** One to each wire, since listening to one never ends. */
    private final List<BackgroundRunner> lineRunners = new ArrayList<>();

    private final List<Screen> screens;
    private final ShellView view;
    private final Parent whole;

    /**
     * @param opened what it shows and keeps; its store is closed with the desk
     * @param toolkit runs something on the toolkit's thread
     * @param demoDoor leads to the demo room, closed with the desk; empty where this is it
     * @param reach how alarms reach somebody who does not look at the desk
     */
    Workbench(OpenedRoom opened, SettingsFile file, Executor toolkit, Optional<DemoDoor> demoDoor, AlarmReach reach) {
        this.opened = opened;
        this.store = opened.store();
        this.clock = opened.clock();
        this.room = opened.room();
        this.roundRoom = new ReadOnlyObjectWrapper<>(opened.written());
        this.toolkit = toolkit;
        this.demoDoor = demoDoor;
        this.runner = new BackgroundRunner("desk work", toolkit);
        this.runners = new DeskTools.Runners(
                new BackgroundRunner("keeper's entries", toolkit),
                new BackgroundRunner("begun sheets", toolkit),
                new BackgroundRunner("brood folders", toolkit),
                new BackgroundRunner("what if", toolkit));
        BroodBook book = opened.book();
        this.days = new DayWords(zoneOf(opened.broods()));
        this.shell = new ShellViewModel(days);
        SettingsFile.Loaded loaded = file.load();
        this.settings = new SettingsViewModel(loaded.settings(), file::save, runner);
        this.tools = new DeskTools(
                opened,
                new DeskTools.Shown(roomView.getReadOnlyProperty(), roundRoom.getReadOnlyProperty(), this::readAgain),
                runners,
                shell,
                settings,
                days,
                this::window);
        settings.settingsProperty().addListener((observed, before, now) -> dress(now));
        dress(loaded.settings());
        loaded.keptAside()
                .ifPresent(aside -> tools.tell(
                        Tone.WARN,
                        Texts.say("The settings were not understood, so the usual ones hold."),
                        Texts.say("They are kept in {0}.", aside)));
        this.watch = new DeskWatch(
                store, clock, days, settings.settingsProperty(), runners.keeper(), toolkit, reach, this::commandFailed);
        this.beside = new DeskIntake(store, watch.watch(), toolkit);
        this.known = demoDoor.isPresent() ? new KnownLinesFile(file.beside(PROBES)) : KnownLines.NONE;
        Intake writeIn = new IntakeParts(tools).intake();
        ClimateParts parts = new ClimateParts(store, book, file.beside(PROFILES), clock, toolkit);
        this.climate = ClimateScreen.of(
                parts.desk(
                        new ClimateParts.Shown(roomView, this::readAgain, shell, days, this::window),
                        watch,
                        beside.besideProperty(),
                        known,
                        settings,
                        new ClimateParts.Runners(runner, runners.keeper(), this::lineRunner)),
                appearance.paletteProperty(),
                writeIn.menu());
        this.photos = new PhotoParts(
                store.photos(),
                book,
                settings.settingsProperty().map(chosen -> chosen.desk().photoFolder()),
                clock,
                days,
                toolkit);
        PlanChoices plans = new PlanChoices(settings.settingsProperty().map(Settings::plans), settings::choose);
        this.sitter = new SitterViewModel(sitterDesk(plans));
        this.screens = screens(writeIn, plans);
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
                new DeedsSheet(new DeedsDesk(tools.undo(), this::takenBack, runners.keeper(), days)));
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

    /** Where the screens are made ready that were not opened yet; asked for once the desk stands in its window. */
    Backstage backstage() {
        return view.backstage();
    }

    void open(String screenId) {
        shell.currentProperty().set(screenId);
    }

    /** The room as the round shows it: as it was written at first, with its dates once they are worked out. */
    ReadOnlyObjectProperty<RoomView> roundRoomProperty() {
        return tools.shown().written();
    }

    /** The room with its dates. */
    ReadOnlyObjectProperty<RoomView> roomProperty() {
        return tools.shown().room();
    }

    /**
     * What the desk reads once it is seen: first, whether the keeper's own timings hold, told whether or not there is
     * anything to date; then the room.
     */
    void readFirst() {
        runner.run(progress -> opened.forecasting().get().assumed().problem(), outcome -> {
            if (outcome instanceof Outcome.Done<Optional<String>> read) {
                read.value()
                        .ifPresent(problem ->
                                tools.tell(Tone.WARN, Texts.say("Your own timings of species are not used."), problem));
            }
        });
        readAgain();
    }

    /** Asks for the room to be read anew, aside; every screen shows it once it is there. */
    void readAgain() {
        runner.run(
                progress -> {
                    RoomView read = room.at(clock.instant());
                    watch.follow(read);
                    return read;
                },
                this::show);
    }

    /** Ends every link first: what a probe said until now is to be on disk before the store is closed. */
    @Override
    public void close() {
        demoDoor.ifPresent(DemoDoor::close);
        climate.close();
        lineRunners.forEach(each -> each.finish(LONGEST_ENDING));
        watch.close();
        beside.close();
        photos.close();
        runner.close();
        runners.keeper().finish(LONGEST_ENDING);
        runners.typed().finish(LONGEST_ENDING);
        runners.intake().close();
        runners.whatIf().close();
        store.close();
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

    private void show(Outcome<RoomView> outcome) {
        if (outcome instanceof Outcome.Done<RoomView> done) {
            roomView.set(done.value());
            roundRoom.set(done.value());
            shell.show(
                    TopLineReader.read(
                            done.value(), days, settings.vocabularyProperty().get()),
                    clock.instant());
        } else if (outcome instanceof Outcome.Failed<RoomView> failed) {
            tools.tell(
                    Tone.BAD,
                    Texts.say("The room could not be read."),
                    String.valueOf(failed.fault().getMessage()));
        }
    }

    private List<Screen> screens(Intake writeIn, PlanChoices plans) {
        ObservableObjectValue<Palette> palette = appearance.paletteProperty();
        BroodsParts broods = new BroodsParts(tools, photos.desk(), demoDoor);
        PotParts pots = new PotParts(tools);
        ForecastParts forecasts = new ForecastParts(tools, plans, sitter);
        return List.of(
                new RoundScreen(roundDesk()),
                new LaterScreen(BroodsScreen.NAME, () -> BroodsScreen.of(broods.desk(), palette)),
                new LaterScreen(ShelfScreen.NAME, () -> ShelfScreen.of(shelfDesk(pots.labels()))),
                new LaterScreen(ClimateScreen.NAME, () -> writeIn.over(climate.screen())),
                new LaterScreen(ForecastScreen.NAME, () -> forecasts.screen(palette)),
                new LaterScreen(PottingScreen.NAME, () -> new PottingScreen(pots.potting())),
                new LaterScreen(RegisterScreen.NAME, () -> RegisterScreen.of(pots.register())));
    }

    private RoundDesk roundDesk() {
        return new RoundDesk(
                tools.shown().written(),
                this::readAgain,
                new RecordRound(tools.book(), clock, tools.ids()),
                tools.undo(),
                runners.keeper(),
                shell,
                clock,
                days,
                tools.words(),
                tools.begun(opened.begunSheets(), Texts.say("sheets")),
                new TallyNotes(),
                photos.desk());
    }

    private ShelfDesk shelfDesk(LabelDesk labels) {
        return new ShelfDesk(
                tools.shown().room(),
                this::readAgain,
                new ArrangeShelf(tools.book(), clock, tools.ids()),
                new ShareTrays(tools.book(), clock, tools.ids()),
                tools.undo(),
                labels,
                runners.keeper(),
                shell,
                clock,
                days,
                tools.words());
    }

    private SitterDesk sitterDesk(PlanChoices plans) {
        return new SitterDesk(
                tools.shown().written(),
                this::readAgain,
                opened.sitterMode(),
                new SitterDeeds(new RecordRound(tools.book(), clock, tools.ids()), clock),
                tools.undo(),
                plans,
                watch.model(),
                runners.keeper(),
                clock,
                days,
                tools.words());
    }

    private BackgroundRunner lineRunner() {
        BackgroundRunner made = new BackgroundRunner("probe log", toolkit);
        lineRunners.add(made);
        return made;
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
        tools.tell(Tone.WARN, Texts.say("The translation is not understood, so the desk speaks English."), problem);
    }

    private void commandFailed(UncheckedIOException fault) {
        tools.tell(Tone.BAD, Texts.say("The command for alarms could not be run."), String.valueOf(fault.getMessage()));
    }

    /** The zone of the keeper's broods; that of this machine before there is any. */
    private static ZoneId zoneOf(List<Brood> broods) {
        return broods.isEmpty()
                ? ZoneId.systemDefault()
                : broods.get(broods.size() - 1).zone();
    }
}

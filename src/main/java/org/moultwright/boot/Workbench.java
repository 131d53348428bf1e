package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Parent;
import javafx.stage.Window;
import org.moultwright.boot.machine.AlarmCommand;
import org.moultwright.boot.machine.TallyNotes;
import org.moultwright.device.serial.KnownLinesFile;
import org.moultwright.document.IcsCalendarFiles;
import org.moultwright.document.PdfHandOverSlips;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.document.PdfPicturePages;
import org.moultwright.document.PdfSitterSheets;
import org.moultwright.domain.Brood;
import org.moultwright.exchange.DelimitedReadings;
import org.moultwright.exchange.DraftsFile;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.BackgroundRunner;
import org.moultwright.task.Outcome;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.broods.BeliefWays;
import org.moultwright.ui.broods.BroodPaper;
import org.moultwright.ui.broods.BroodsDesk;
import org.moultwright.ui.broods.BroodsScreen;
import org.moultwright.ui.broods.FolderDialog;
import org.moultwright.ui.broods.SacWays;
import org.moultwright.ui.broods.WaysIn;
import org.moultwright.ui.climate.ClimateScreen;
import org.moultwright.ui.control.SaveDialog;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.deeds.DeedsDesk;
import org.moultwright.ui.deeds.DeedsSheet;
import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.ui.forecast.ForecastDesk;
import org.moultwright.ui.forecast.ForecastScreen;
import org.moultwright.ui.intake.Intake;
import org.moultwright.ui.intake.IntakeDesk;
import org.moultwright.ui.intake.ReadingFileDialog;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.label.PdfFileDialog;
import org.moultwright.ui.label.SystemPrinter;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.potting.PatternChoice;
import org.moultwright.ui.potting.PottingDesk;
import org.moultwright.ui.potting.PottingScreen;
import org.moultwright.ui.print.PaperPrinter;
import org.moultwright.ui.register.RegisterDesk;
import org.moultwright.ui.register.RegisterScreen;
import org.moultwright.ui.round.RoundDesk;
import org.moultwright.ui.round.RoundScreen;
import org.moultwright.ui.settings.SettingsScreen;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.shelf.ShelfDesk;
import org.moultwright.ui.shelf.ShelfScreen;
import org.moultwright.ui.shell.Backstage;
import org.moultwright.ui.shell.LaterScreen;
import org.moultwright.ui.shell.Notice;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ShellView;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.ui.shell.TopLineReader;
import org.moultwright.ui.takealong.SitterDesk;
import org.moultwright.ui.takealong.SitterViewModel;
import org.moultwright.ui.takealong.TakeAlong;
import org.moultwright.ui.takealong.TakeAlongDesk;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Palette;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.BeginBrood;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.BroodFolders;
import org.moultwright.workflow.KnownLines;
import org.moultwright.workflow.OpenSac;
import org.moultwright.workflow.PotSlings;
import org.moultwright.workflow.PullSac;
import org.moultwright.workflow.RecordRound;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ScoreForecasts;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.SitterDeeds;
import org.moultwright.workflow.SittersBook;
import org.moultwright.workflow.StateBelief;
import org.moultwright.workflow.TakeInFolders;
import org.moultwright.workflow.TakeInReadings;
import org.moultwright.workflow.TendPots;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WriteClimate;

/** The whole desk over one store, put together by hand. Lives on the toolkit's thread. */
final class Workbench implements AutoCloseable {
    /** Where a desk without broods opens: all ways to one are there. */
    private static final String WHERE_BROODS_COME_IN = "broods";

    private static final String PROBES = "probes.txt";

    private static final String SHEETS_BEGUN = ".sheets";

    private static final String FORMS_BEGUN = ".forms";

    private static final String PROFILES = "profiles";

    /** How long a link may take to end; opening a port that does not answer takes longest. */
    private static final Duration LONGEST_ENDING = Duration.ofSeconds(5);

    private static final Path HOME = Path.of(System.getProperty("user.home"));

    private final H2Store store;
    private final InstantSource clock;
    private final Room room;
    private final ReadOnlyObjectWrapper<RoomView> roomView = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);

    /** The same, but there before the first dates are: the round needs none to begin. */
    private final ReadOnlyObjectWrapper<RoomView> roundRoom;

    private final Appearance appearance = new Appearance();
    private final BackgroundRunner runner;

    /** What the keeper enters never waits behind a forecast. */
    private final BackgroundRunner keeper;

    /** What is typed is on disk within moments, whatever else goes on. */
    private final BackgroundRunner typed;

    /** A brood folder of many readings takes a while; nothing waits behind it. */
    private final BackgroundRunner intake;

    /** What-ifs move lanes under the keeper's hand; they wait for nothing else. */
    private final BackgroundRunner whatIf;

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
    private final PlanChoices plans;
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
        this.keeper = new BackgroundRunner("keeper's entries", toolkit);
        this.typed = new BackgroundRunner("begun sheets", toolkit);
        this.intake = new BackgroundRunner("brood folders", toolkit);
        this.whatIf = new BackgroundRunner("what if", toolkit);
        BroodBook book = opened.book();
        this.days = new DayWords(zoneOf(opened.broods()));
        this.shell = new ShellViewModel(days);
        SettingsFile.Loaded loaded = file.load();
        this.settings = new SettingsViewModel(loaded.settings(), file::save, runner);
        settings.settingsProperty().addListener((observed, before, now) -> dress(now));
        dress(loaded.settings());
        loaded.keptAside()
                .ifPresent(aside -> tell(
                        Tone.WARN,
                        Texts.say("The settings were not understood, so the usual ones hold."),
                        Texts.say("They are kept in {0}.", aside)));
        this.watch = new DeskWatch(
                store, clock, days, settings.settingsProperty(), keeper, toolkit, reach, this::commandFailed);
        this.beside = new DeskIntake(store, watch.watch(), toolkit);
        this.known = demoDoor.isPresent() ? new KnownLinesFile(file.beside(PROBES)) : KnownLines.NONE;
        Intake writeIn = writeIn(book, new UndoDeed(book, clock, UUID::randomUUID), UUID::randomUUID);
        ClimateParts parts = new ClimateParts(store, book, file.beside(PROFILES), clock, toolkit);
        this.climate = ClimateScreen.of(
                parts.desk(
                        new ClimateParts.Shown(roomView, this::readAgain, shell, days, this::window),
                        watch,
                        beside.besideProperty(),
                        known,
                        settings,
                        new ClimateParts.Runners(runner, keeper, this::lineRunner)),
                appearance.paletteProperty(),
                writeIn.menu());
        this.photos = new PhotoParts(
                store.photos(),
                book,
                settings.settingsProperty().map(chosen -> chosen.desk().photoFolder()),
                clock,
                days,
                toolkit);
        this.plans = new PlanChoices(settings.settingsProperty().map(Settings::plans), settings::choose);
        this.sitter = new SitterViewModel(sitterDesk(book));
        this.screens = screens(book, writeIn);
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
                new DeedsSheet(
                        new DeedsDesk(new UndoDeed(book, clock, UUID::randomUUID), this::takenBack, keeper, days)));
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
        return view.backstage(appearance::dress);
    }

    void open(String screenId) {
        shell.currentProperty().set(screenId);
    }

    /** The room as the round shows it: as it was written at first, with its dates once they are worked out. */
    ReadOnlyObjectProperty<RoomView> roundRoomProperty() {
        return roundRoom.getReadOnlyProperty();
    }

    /** The room with its dates. */
    ReadOnlyObjectProperty<RoomView> roomProperty() {
        return roomView.getReadOnlyProperty();
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
        keeper.finish(LONGEST_ENDING);
        typed.finish(LONGEST_ENDING);
        intake.close();
        whatIf.close();
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
            if (roomView.get().equals(RoomView.EMPTY)) {
                opened.forecasting()
                        .get()
                        .assumed()
                        .problem()
                        .ifPresent(problem ->
                                tell(Tone.WARN, Texts.say("Your own timings of species are not used."), problem));
            }
            roomView.set(done.value());
            roundRoom.set(done.value());
            shell.show(
                    TopLineReader.read(
                            done.value(), days, settings.vocabularyProperty().get()),
                    clock.instant());
        } else if (outcome instanceof Outcome.Failed<RoomView> failed) {
            tell(
                    Tone.BAD,
                    Texts.say("The room could not be read."),
                    String.valueOf(failed.fault().getMessage()));
        }
    }

    private List<Screen> screens(BroodBook book, Intake writeIn) {
        Supplier<UUID> ids = UUID::randomUUID;
        UndoDeed undo = new UndoDeed(book, clock, ids);
        ObservableObjectValue<Vocabulary> words = settings.vocabularyProperty();
        ObservableObjectValue<Palette> palette = appearance.paletteProperty();
        RecordRound record = new RecordRound(book, clock, ids);
        PotSlings potSlings = new PotSlings(book, clock, ids);
        return List.of(
                new RoundScreen(new RoundDesk(
                        roundRoom,
                        this::readAgain,
                        record,
                        undo,
                        keeper,
                        shell,
                        clock,
                        days,
                        words,
                        begun(DraftsFile.ofSheets(store.beside(SHEETS_BEGUN)), Texts.say("sheets")),
                        new TallyNotes(),
                        photos.desk())),
                new LaterScreen(
                        BroodsScreen.NAME,
                        () -> BroodsScreen.of(
                                new BroodsDesk(
                                        roomView,
                                        this::readAgain,
                                        waysIn(book, ids),
                                        beliefs(book, undo),
                                        broodPaper(),
                                        keeper,
                                        clock,
                                        days,
                                        words,
                                        photos.desk()),
                                palette)),
                new LaterScreen(
                        ShelfScreen.NAME,
                        () -> ShelfScreen.of(new ShelfDesk(
                                roomView,
                                this::readAgain,
                                new ArrangeShelf(book, clock, ids),
                                new ShareTrays(book, clock, ids),
                                undo,
                                labelDesk(),
                                keeper,
                                shell,
                                clock,
                                days,
                                words))),
                new LaterScreen(ClimateScreen.NAME, () -> writeIn.over(climate.screen())),
                new LaterScreen(ForecastScreen.NAME, () -> forecast(book, palette)),
                new LaterScreen(
                        PottingScreen.NAME,
                        () -> new PottingScreen(new PottingDesk(
                                roomView,
                                this::readAgain,
                                potSlings,
                                undo,
                                codePattern(),
                                new PdfLabelPrinter(),
                                new PdfFileDialog(this::window, HOME),
                                new SystemPrinter(this::window),
                                keeper,
                                shell,
                                clock,
                                days,
                                words))),
                new LaterScreen(RegisterScreen.NAME, () -> register(book, undo)));
    }

    private PatternChoice codePattern() {
        return new PatternChoice(
                settings.settingsProperty().get().desk().codePattern(),
                pattern ->
                        settings.choose(settings.settingsProperty().get().desk().withCodePattern(pattern)));
    }

    private LabelDesk labelDesk() {
        return new LabelDesk(
                new PdfLabelPrinter(), new PdfFileDialog(this::window, HOME), new SystemPrinter(this::window), keeper);
    }

    private Screen register(BroodBook book, UndoDeed undo) {
        return RegisterScreen.of(new RegisterDesk(
                roomView,
                this::readAgain,
                new TendPots(book, clock, UUID::randomUUID),
                undo,
                new PdfHandOverSlips(),
                new SaveDialog(
                        this::window,
                        HOME,
                        new SaveDialog.Kind(Texts.say("Save the hand-over slip"), Texts.say("PDF"), ".pdf")),
                labelDesk(),
                keeper,
                shell,
                clock,
                days,
                settings.vocabularyProperty()));
    }

    private SitterDesk sitterDesk(BroodBook book) {
        return new SitterDesk(
                roundRoom,
                this::readAgain,
                opened.sitterMode(),
                new SitterDeeds(new RecordRound(book, clock, UUID::randomUUID), clock),
                new UndoDeed(book, clock, UUID::randomUUID),
                plans,
                watch.model(),
                keeper,
                clock,
                days,
                settings.vocabularyProperty());
    }

    private Screen forecast(BroodBook book, ObservableObjectValue<Palette> palette) {
        Forecasting forecasting = opened.forecasting().get();
        ScoreForecasts scores =
                new ScoreForecasts(book, store.readings(), store.forecasts(), forecasting.forecaster()::forecast);
        TakeAlong takeAlong = takeAlong();
        return takeAlong.over(ForecastScreen.of(
                new ForecastDesk(
                        roomView,
                        forecasting.prepared()::of,
                        whatIf,
                        scores::byEvent,
                        days,
                        settings.vocabularyProperty(),
                        plans),
                palette,
                takeAlong.button()));
    }

    /** @param what such as "sheets" */
    private <T> BegunDesk<T> begun(DraftsFile<T> file, String what) {
        DraftsFile.Loaded<T> loaded = file.load();
        loaded.problem()
                .ifPresent(problem ->
                        tell(Tone.WARN, Texts.say("The {0} begun last time could not be read.", what), problem));
        return new BegunDesk<>(loaded.drafts(), file, typed);
    }

    private BeliefWays beliefs(BroodBook book, UndoDeed undo) {
        Forecasting forecasting = opened.forecasting().get();
        return new BeliefWays(
                new StateBelief(book, clock, UUID::randomUUID),
                undo,
                shell,
                forecasting.assumed().timings(),
                forecasting.own().place());
    }

    private BroodPaper broodPaper() {
        return new BroodPaper(
                new PaperPrinter(this::window),
                new PdfPicturePages(),
                new SaveDialog(
                        this::window,
                        HOME,
                        new SaveDialog.Kind(Texts.say("Save the brood's page"), Texts.say("PDF"), ".pdf")));
    }

    private WaysIn waysIn(BroodBook book, Supplier<UUID> ids) {
        BroodFolders folders = new PlainBroodFolders();
        return new WaysIn(
                new SacWays(
                        new BeginBrood(book, clock, ids),
                        new PullSac(book, clock, ids),
                        new OpenSac(book, clock, ids),
                        begun(DraftsFile.ofForms(store.beside(FORMS_BEGUN)), Texts.say("forms"))),
                new FolderDialog(this::window, HOME),
                (folder, progress) -> new TakeInFolders(
                                new WatchedFolders(folders, progress), book, Optional.of(store.photos()))
                        .takeIn(folder),
                intake,
                demoDoor.map(door -> () -> enter(door)));
    }

    private Intake writeIn(BroodBook book, UndoDeed undo, Supplier<UUID> ids) {
        DelimitedReadings files = new DelimitedReadings();
        return new Intake(new IntakeDesk(
                roomView,
                this::readAgain,
                new WriteClimate(book, store.climate(), clock, ids),
                undo,
                files,
                new TakeInReadings(
                        files,
                        SittersBook.guarding(store.bulkReadings(), opened.sitterMode()),
                        book,
                        store.climate(),
                        clock,
                        ids),
                new ReadingFileDialog(this::window, HOME),
                keeper,
                intake,
                clock,
                days));
    }

    private TakeAlong takeAlong() {
        TakeAlongDesk desk = new TakeAlongDesk(
                roomView,
                plans,
                new IcsCalendarFiles(),
                new SaveDialog(
                        this::window,
                        HOME,
                        new SaveDialog.Kind(Texts.say("Save the calendar"), Texts.say("Calendar"), ".ics")),
                new PdfSitterSheets(),
                new SaveDialog(
                        this::window,
                        HOME,
                        new SaveDialog.Kind(Texts.say("Save the sitter's sheet"), Texts.say("PDF"), ".pdf")),
                keeper,
                clock,
                days,
                settings.vocabularyProperty());
        return new TakeAlong(desk, sitter);
    }

    private void enter(DemoDoor door) {
        tell(Tone.ACCENT, Texts.say("The demo room is being made ready. It opens in a window of its own."), "");
        door.open(
                intake,
                () -> shell.noticeProperty().set(Optional.empty()),
                fault -> tell(
                        Tone.BAD, Texts.say("The demo room cannot be opened."), String.valueOf(fault.getMessage())));
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

    private void tell(Tone tone, String sentence, String remedy) {
        shell.noticeProperty().set(Optional.of(new Notice(tone, sentence, remedy)));
    }

    /** Tells that the language chosen could not be spoken, and why. */
    void tellOfLanguage(String problem) {
        tell(Tone.WARN, Texts.say("The translation is not understood, so the desk speaks English."), problem);
    }

    private void commandFailed(UncheckedIOException fault) {
        tell(Tone.BAD, Texts.say("The command for alarms could not be run."), String.valueOf(fault.getMessage()));
    }

    /** The zone of the keeper's broods; that of this machine before there is any. */
    private static ZoneId zoneOf(List<Brood> broods) {
        return broods.isEmpty()
                ? ZoneId.systemDefault()
                : broods.get(broods.size() - 1).zone();
    }
}

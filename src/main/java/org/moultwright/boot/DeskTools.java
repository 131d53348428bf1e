package org.moultwright.boot;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.UUID;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.stage.Window;
import org.moultwright.domain.label.Paper;
import org.moultwright.exchange.DraftsFile;
import org.moultwright.language.Texts;
import org.moultwright.store.H2Store;
import org.moultwright.task.BackgroundRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.SaveDialog;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.ui.print.PaperPrinter;
import org.moultwright.ui.print.Printers;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.Drafts;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.UndoDeed;

/**
 * What every screen of the desk works with.
 *
 * @param opened what the desk shows and keeps
 * @param shown the room on screen
 * @param runners who works aside
 * @param shell where things are said
 * @param window where dialogs belong, once it is there
 */
record DeskTools(
        OpenedRoom opened,
        Shown shown,
        Runners runners,
        ShellViewModel shell,
        SettingsViewModel settings,
        DayWords days,
        Supplier<Window> window) {
    static final Path HOME = Path.of(System.getProperty("user.home"));

    /**
     * The room on screen.
     *
     * @param room with its dates
     * @param written the same, but there before the first dates are: the round needs none to begin
     * @param readAgain asks for it to be read anew
     */
    record Shown(ReadOnlyObjectProperty<RoomView> room, ReadOnlyObjectProperty<RoomView> written, Runnable readAgain) {}

    /**
     * Who works aside.
     *
     * @param keeper keeps what the keeper enters, which never waits behind a forecast
     * @param typed has on disk within moments what is typed, whatever else goes on
     * @param intake takes in folders and files of many readings, which takes a while; nothing waits behind it
     * @param whatIf moves lanes under the keeper's hand; they wait for nothing else
     */
    record Runners(BackgroundRunner keeper, BackgroundRunner typed, BackgroundRunner intake, BackgroundRunner whatIf) {}

    H2Store store() {
        return opened.store();
    }

    BroodBook book() {
        return opened.book();
    }

    InstantSource clock() {
        return opened.clock();
    }

    /** Where the ids of what is written come from. */
    Supplier<UUID> ids() {
        return UUID::randomUUID;
    }

    UndoDeed undo() {
        return new UndoDeed(book(), clock(), ids());
    }

    ObservableObjectValue<Vocabulary> words() {
        return settings.vocabularyProperty();
    }

    /** @param title such as "Save the brood's page" */
    SaveDialog savesPdf(String title) {
        return new SaveDialog(window, HOME, new SaveDialog.Kind(title, Texts.say("PDF"), ".pdf"));
    }

    /** The machine's own printers, for what is drawn on screen. */
    PaperPrinter paperPrinter() {
        return new PaperPrinter(window, Printers.ofThisMachine());
    }

    /** What is saved for plain paper is as large as the keeper's. */
    Paper paper() {
        return settings.settingsProperty().get().place().paperOn(DeskLanguage.machine());
    }

    /** @param what such as "sheets" */
    <T> BegunDesk<T> begun(DraftsFile<T> file, String what) {
        return begun(file, file.load(), what);
    }

    /** @param what such as "sheets" */
    <T> BegunDesk<T> begun(BegunFile<T> read, String what) {
        return begun(read.file(), read.loaded().join(), what);
    }

    private <T> BegunDesk<T> begun(DraftsFile<T> file, DraftsFile.Loaded<T> loaded, String what) {
        loaded.problem()
                .ifPresent(problem ->
                        tell(Tone.WARN, Texts.say("The {0} begun last time could not be read.", what), problem));
        Drafts<T> behind = drafts -> {
            // Nothing is written beside a store that cannot be opened.
            store().awaitOpen();
            file.keep(drafts);
        };
        return new BegunDesk<>(loaded.drafts(), behind, runners.typed());
    }

    void tell(Tone tone, String sentence, String remedy) {
        shell.tell(tone, sentence, remedy);
    }
}

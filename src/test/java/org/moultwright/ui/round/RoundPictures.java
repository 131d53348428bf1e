package org.moultwright.ui.round;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;
import javafx.scene.Parent;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Stage;
import org.moultwright.language.Translations;
import org.moultwright.settings.Settings;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.alarm.AlarmViewModel;
import org.moultwright.ui.alarm.InventedWatch;
import org.moultwright.ui.settings.SettingsScreen;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.shell.BlankSheet;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;
import org.moultwright.ui.shell.ShellView;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.ui.shell.TopLine;
import org.moultwright.workflow.RoomView;

/** The round in the states worth looking at. */
public final class RoundPictures {
    private RoundPictures() {}

    public static Parent counting() {
        return at(2, (model, open) -> {
            write(open, "", "", "51", "8", "0");
            open.keys().typed('w');
        });
    }

    public static Parent mouldAndDead() {
        return at(2, (model, open) -> {
            write(open, "", "", "seen", "7/20", "none");
            open.fields().take(Stage.INSTAR1, Cause.MOULD, 2);
            open.fields().take(Stage.DARKENED, Cause.FAILED_MOULT, 1);
            open.keys().typed('m');
            open.keys().typed('l');
        });
    }

    public static Parent unbalanced() {
        return at(2, (model, open) -> {
            write(open, "", "", "50", "8", "0");
            model.done();
        });
    }

    /** A sheet whose tray was counted meanwhile, and one whose tray is gone. */
    public static Parent interrupted() {
        InventedRoom room = new InventedRoom();
        room.begun = List.of(BegunSheetsTest.draft("D1"));
        RoundViewModel model = new RoundViewModel(room.desk());
        RoundView view = new RoundView(model);
        write(model.openProperty().get().orElseThrow(), "", "", "34", "22", "0");
        BegunSheetsTest.countElsewhere(room);
        return framed(view, "round");
    }

    public static Parent farOff() {
        return at(2, (model, open) -> {
            write(open, "", "", "51", "90", "0");
            open.fields().rows().forEach(StageRow::left);
        });
    }

    /** A tray with photos, one of them lost, and new ones in the keeper's folder. */
    public static Parent photos() {
        return framed(new RoundView(new RoundViewModel(InventedPhotos.room().desk())), "round");
    }

    /** One photo, large. */
    public static Parent photoLarge() {
        return InventedPhotos.large();
    }

    public static Parent asking() {
        return at(2, (model, open) -> {
            open.keys().typed('d');
            open.keys().typed('3');
        });
    }

    public static Parent empty() {
        InventedRoom room = new InventedRoom();
        RoundDesk desk = room.desk();
        return (Parent) new RoundScreen(new RoundDesk(
                        new ReadOnlyObjectWrapper<>(RoomView.EMPTY),
                        desk.readAgain(),
                        desk.record(),
                        desk.undo(),
                        desk.runner(),
                        desk.saveLine(),
                        desk.clock(),
                        desk.days(),
                        desk.vocabulary(),
                        desk.begun(),
                        desk.sounds(),
                        desk.photos()))
                .node();
    }

    private static Parent at(int position, BiConsumer<RoundViewModel, OpenSheet> fill) {
        RoundViewModel model = new RoundViewModel(new InventedRoom().desk());
        RoundView view = new RoundView(model);
        for (int done = 0; done < position; done++) {
            model.openProperty().get().orElseThrow().keys().typed('=');
            model.done();
        }
        fill.accept(model, model.openProperty().get().orElseThrow());
        return framed(view, "round");
    }

    /** The frame with the keeper's choices open in it. */
    public static Parent settings() {
        return framed(new RoundView(new RoundViewModel(new InventedRoom().desk())), "settings");
    }

    /** The round with these alarms over it. */
    public static Parent under(AlarmViewModel alarms) {
        return framed(new RoundView(new RoundViewModel(new InventedRoom().desk())), "round", alarms);
    }

    private static Parent framed(RoundView view, String open) {
        return framed(view, open, new InventedWatch().model);
    }

    private static Parent framed(RoundView view, String open, AlarmViewModel alarms) {
        ShellViewModel frame = new ShellViewModel(new DayWords(ZoneOffset.UTC));
        Instant now = InventedRoom.NOW;
        frame.show(
                new TopLine(
                        List.of(
                                new TopLine.ProbeNow("box 1", 27.0, now.minusSeconds(40)),
                                new TopLine.ProbeNow("box 2", 26.9, now.minusSeconds(38))),
                        Optional.of(new TopLine.TraysLeft(2, 4)),
                        Optional.of(new TopLine.NextMoult("A1 and A2 become slings", "4 to 8 May"))),
                now);
        frame.saved(now, () -> {});
        frame.currentProperty().set(open);
        SettingsViewModel settings = new SettingsViewModel(Settings.DEFAULT, kept -> {}, new InlineRunner());
        return new ShellView(
                frame,
                alarms,
                List.of(new Pictured(view)),
                new SettingsScreen(settings, AlarmReach.NOBODY, command -> "", new Translations(Path.of("none"))),
                new BlankSheet(),
                List.of());
    }

    private record Pictured(RoundView view) implements Screen {
        @Override
        public ScreenName name() {
            return RoundScreen.NAME;
        }

        @Override
        public Node node() {
            return view;
        }
    }

    private static void write(OpenSheet open, String... looks) {
        for (int i = 0; i < looks.length; i++) {
            open.fields().rows().get(i).textProperty().set(looks[i]);
        }
    }
}

package org.moultwright.ui.intake;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.moultwright.language.Texts;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;

/** Pages that open over a screen: a reading typed, a day's lowest and highest, a file of readings. */
public final class Intake {
    private static final List<KeyHint> KEYS = List.of(
            new KeyHint("Ctrl + R", Texts.say("write in a reading")),
            new KeyHint("Ctrl + L", Texts.say("write in a day's lowest and highest")),
            new KeyHint("Ctrl + O", Texts.say("take in a file of readings")));
    private static final KeyCombination READING = new KeyCodeCombination(KeyCode.R, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination EXTREMES = new KeyCodeCombination(KeyCode.L, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination FILE = new KeyCodeCombination(KeyCode.O, KeyCombination.SHORTCUT_DOWN);

    private final IntakeDesk desk;
    private final StackPane pages = new StackPane();
    private Runnable close = () -> {};

    public Intake(IntakeDesk desk) {
        this.desk = desk;
    }

    /** The one word a screen shows for all of it. */
    public Node menu() {
        MenuButton menu = new MenuButton(Texts.say("Write in"));
        menu.setMinWidth(Region.USE_PREF_SIZE);
        menu.setAccessibleText(Texts.say("Write in"));
        menu.getItems()
                .addAll(
                        item(Texts.say("A reading"), READING, this::openReading),
                        item(Texts.say("A day's lowest and highest"), EXTREMES, this::openExtremes),
                        item(Texts.say("A file of readings"), FILE, this::openFile));
        return menu;
    }

    /** A screen over which these pages open. */
    public Screen over(Screen screen) {
        close = () -> {
            pages.getChildren().setAll(screen.node());
            screen.shown();
        };
        pages.getChildren().setAll(screen.node());
        pages.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        List<KeyHint> keys = new ArrayList<>(screen.keys());
        keys.addAll(KEYS);
        return new PlainScreen(screen.name(), pages, () -> shown(screen), List.copyOf(keys));
    }

    /** A page half filled in waits for its keeper. */
    private void shown(Screen screen) {
        if (pages.getChildren().contains(screen.node())) {
            screen.shown();
        }
    }

    private void openReading() {
        ReadingView view = new ReadingView(new ReadingViewModel(desk), close);
        pages.getChildren().setAll(view.node());
        view.takeFocus();
    }

    private void openExtremes() {
        ExtremesView view = new ExtremesView(new ExtremesViewModel(desk), close);
        pages.getChildren().setAll(view.node());
        view.takeFocus();
    }

    private void openFile() {
        desk.chooser().get().ifPresent(file -> {
            FileView view = new FileView(new FileViewModel(desk, file), desk, close);
            pages.getChildren().setAll(view);
            view.takeFocus();
        });
    }

    private void pressed(KeyEvent event) {
        if (READING.match(event)) {
            openReading();
        } else if (EXTREMES.match(event)) {
            openExtremes();
        } else if (FILE.match(event)) {
            openFile();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            close.run();
        } else {
            return;
        }
        event.consume();
    }

    private static MenuItem item(String words, KeyCombination key, Runnable open) {
        MenuItem item = new MenuItem(words);
        item.setAccelerator(key);
        item.setOnAction(event -> open.run());
        return item;
    }
}

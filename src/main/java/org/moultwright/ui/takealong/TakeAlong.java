package org.moultwright.ui.takealong;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.moultwright.language.Texts;
import org.moultwright.task.Once;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;

/** The page that opens over the forecast: what can be taken along of it. */
public final class TakeAlong {
    private static final KeyHint KEY = new KeyHint("Ctrl + T", Texts.say("take along: a sitter's sheet, a calendar"));
    private static final KeyCombination OPEN = new KeyCodeCombination(KeyCode.T, KeyCombination.SHORTCUT_DOWN);

    private final StackPane pages = new StackPane();

    /** Made when it is first opened: it has a row for each tray, and a forecast is seldom taken along. */
    private final Once<TakeAlongView> view;

    private final Once<TakeAlongViewModel> model;

    private Runnable close = () -> {};

    /** @param sitter to whom the desk can be handed over */
    public TakeAlong(TakeAlongDesk desk, SitterViewModel sitter) {
        this.model = new Once<>(() -> new TakeAlongViewModel(desk));
        this.view = new Once<>(() -> new TakeAlongView(model.get(), sitter, () -> close.run()));
    }

    /** The one word the forecast shows for it. */
    public Node button() {
        Button button = Buttons.secondary(Texts.say("Take along"), this::open);
        button.getStyleClass().add("small-button");
        return button;
    }

    /** The screen over which the page opens. */
    public Screen over(Screen screen) {
        close = () -> {
            pages.getChildren().setAll(screen.node());
            screen.shown();
        };
        pages.getChildren().setAll(screen.node());
        pages.addEventHandler(KeyEvent.KEY_PRESSED, event -> pressed(event, screen));
        List<KeyHint> keys = new ArrayList<>(screen.keys());
        keys.add(KEY);
        return new PlainScreen(screen.name(), pages, () -> shown(screen), keys);
    }

    /** A page half filled in waits for its keeper. */
    private void shown(Screen screen) {
        if (isClosed(screen)) {
            screen.shown();
        }
    }

    private boolean isClosed(Screen screen) {
        return pages.getChildren().contains(screen.node());
    }

    private void open() {
        model.get().openAnew();
        TakeAlongView page = view.get();
        pages.getChildren().setAll(page);
        page.takeFocus();
    }

    private void pressed(KeyEvent event, Screen screen) {
        if (OPEN.match(event) && isClosed(screen)) {
            open();
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE && !isClosed(screen)) {
            close.run();
            event.consume();
        }
    }
}

package org.moultwright.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.ui.alarm.AlarmBanner;
import org.moultwright.ui.alarm.AlarmKeys;
import org.moultwright.ui.alarm.AlarmViewModel;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Keys;
import org.moultwright.ui.control.Tone;

/** The frame: rail, top line, and the open screen between them. */
public final class ShellView extends BorderPane {
    private final ShellViewModel model;
    private final AlarmViewModel alarms;
    private final List<Screen> screens;
    private final List<Screen> inRail;
    private final ScrollPane host = new ScrollPane();
    private final KeySheet keySheet = new KeySheet(() -> showKeys(false));

    /**
     * @param alarms shown over every screen
     * @param screens in the rail's order
     * @param foot the screen at the rail's foot, the keeper's choices
     */
    public ShellView(ShellViewModel model, AlarmViewModel alarms, List<Screen> screens, Screen foot) {
        this.model = model;
        this.alarms = alarms;
        this.inRail = List.copyOf(screens);
        List<Screen> all = new ArrayList<>(screens);
        all.add(foot);
        this.screens = List.copyOf(all);
        build(foot);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        model.currentProperty().addListener((observed, before, now) -> open());
        if (current().isEmpty()) {
            model.currentProperty().set(this.screens.get(0).name().id());
        } else {
            open();
        }
    }

    private void build(Screen foot) {
        host.setFitToWidth(true);
        host.setFitToHeight(true);
        host.setFocusTraversable(false);
        // A page can take the focus only once it stands in the window, and the first one does with the frame's skin.
        host.skinProperty().addListener((observed, before, now) -> current().ifPresent(Screen::shown));
        StackPane layers = new StackPane(host, keySheet);
        keySheet.setVisible(false);
        setTop(new AlarmBanner(alarms));
        setLeft(new RailView(model, inRail, foot));
        VBox.setVgrow(layers, Priority.ALWAYS);
        setCenter(new VBox(new TopLineView(model, alarms.lineProperty()), noticeBar(), layers));
        getStyleClass().add("shell");
    }

    private Node noticeBar() {
        Banner bar = new Banner(Tone.ACCENT);
        bar.setActions(Buttons.plain("Close", () -> model.noticeProperty().set(Optional.empty())));
        Runnable show = () -> {
            Notice notice = model.noticeProperty().get().orElse(new Notice(Tone.ACCENT, "", ""));
            bar.setTone(notice.tone());
            bar.sentenceProperty().set(notice.sentence());
            bar.detailProperty().set(notice.remedy());
        };
        model.noticeProperty().addListener((observed, before, now) -> show.run());
        show.run();
        return bar;
    }

    private Optional<Screen> current() {
        return screens.stream()
                .filter(screen ->
                        screen.name().id().equals(model.currentProperty().get()))
                .findFirst();
    }

    private void open() {
        showKeys(false);
        current().ifPresent(screen -> {
            host.setContent(screen.node());
            if (host.getSkin() != null) {
                screen.shown();
            }
        });
    }

    private void pressed(KeyEvent event) {
        Optional<Integer> position = ShellKeys.position(event);
        if (position.isPresent() && position.get() < inRail.size()) {
            model.currentProperty().set(inRail.get(position.get()).name().id());
        } else if (ShellKeys.SETTINGS.match(event)) {
            model.currentProperty().set(screens.get(screens.size() - 1).name().id());
        } else if (ShellKeys.UNDO.match(event) && !Keys.goToText(event)) {
            model.undo();
        } else if (ShellKeys.SHEET.match(event)) {
            showKeys(!keySheet.isVisible());
        } else if (event.getCode() == KeyCode.ESCAPE && keySheet.isVisible()) {
            showKeys(false);
        } else if (!AlarmKeys.pressed(event, alarms)) {
            return;
        }
        event.consume();
    }

    private void typed(KeyEvent event) {
        if (event.getCharacter().equals("?") && !Keys.goToText(event)) {
            showKeys(!keySheet.isVisible());
            event.consume();
        }
    }

    private void showKeys(boolean visible) {
        boolean wasVisible = keySheet.isVisible();
        keySheet.setVisible(visible);
        if (visible) {
            current().ifPresent(screen -> keySheet.show(screen.name().word(), screen.keys()));
        } else if (wasVisible) {
            current().ifPresent(Screen::shown);
        }
    }
}

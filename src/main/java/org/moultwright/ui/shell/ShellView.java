package org.moultwright.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
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
    private final PageHost host = new PageHost();
    private final StackPane layers = new StackPane();
    private final OverSheet keySheet = new KeySheet(this::current);
    private final OverSheet deeds;
    private final List<OverSheet> overSheets;
    private final RailView rail;
    private final TopLineView topLine;

    /**
     * @param alarms shown over every screen
     * @param screens in the rail's order
     * @param foot the screen at the rail's foot, the keeper's choices
     * @param deeds what was written down last, to be taken back
     * @param ofScreens what screens lay over themselves
     */
    public ShellView(
            ShellViewModel model,
            AlarmViewModel alarms,
            List<Screen> screens,
            Screen foot,
            OverSheet deeds,
            List<OverSheet> ofScreens) {
        this.model = model;
        this.alarms = alarms;
        this.deeds = deeds;
        this.overSheets =
                Stream.concat(ofScreens.stream(), Stream.of(keySheet, deeds)).toList();
        this.inRail = List.copyOf(screens);
        List<Screen> all = new ArrayList<>(screens);
        all.add(foot);
        this.screens = List.copyOf(all);
        this.rail = new RailView(model, inRail, foot);
        this.topLine = new TopLineView(model, alarms.lineProperty());
        build();
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        model.currentProperty().addListener((observed, before, now) -> open());
        if (current().isEmpty()) {
            model.currentProperty().set(this.screens.get(0).name().id());
        } else {
            open();
        }
    }

    /** Where the screens are made ready that were not opened yet. */
    public Backstage backstage() {
        return new Backstage(screens, layers, host.getWidth(), host.getHeight());
    }

    /** What a keeper can do without for the first key, the frame's own and that of the open screen. */
    public List<Region> canWait() {
        List<Region> parts = new ArrayList<>(List.of(topLine, rail));
        current().ifPresent(screen -> parts.addAll(screen.canWait()));
        return parts;
    }

    private void build() {
        // A page can take the focus only once it stands in the window, and the first one does with the frame's skin.
        host.skinProperty().addListener((observed, before, now) -> current().ifPresent(Screen::shown));
        layers.getChildren().setAll(host);
        layers.getChildren().addAll(overSheets);
        overSheets.forEach(sheet -> sheet.whenClosed(() -> current().ifPresent(Screen::shown)));
        setTop(new AlarmBanner(alarms));
        // In a box of its own, which another part can stand in for it in.
        setLeft(new HBox(rail));
        VBox.setVgrow(layers, Priority.ALWAYS);
        setCenter(new VBox(topLine, noticeBar(), layers));
        getStyleClass().add("shell");
    }

    private Node noticeBar() {
        Banner bar = new Banner(Tone.ACCENT);
        Button close =
                Buttons.plain(Texts.say("Close"), () -> model.noticeProperty().set(Optional.empty()));
        Button toDeeds = Buttons.secondary(Texts.say("What was written"), deeds::open);
        Runnable show = () -> {
            Notice notice = model.noticeProperty().get().orElse(new Notice(Tone.ACCENT, "", ""));
            bar.setActions(notice.leadsToDeeds() ? new Button[] {toDeeds, close} : new Button[] {close});
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
        overSheets.forEach(OverSheet::close);
        current().ifPresent(screen -> {
            rail.takeFocus();
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
            undo();
        } else if (ShellKeys.DEEDS.match(event) && !Keys.goToText(event)) {
            turn(deeds);
        } else if (ShellKeys.SHEET.match(event)) {
            turn(keySheet);
        } else if (event.getCode() == KeyCode.ESCAPE && overSheets.stream().anyMatch(OverSheet::isVisible)) {
            overSheets.forEach(OverSheet::close);
        } else if (!AlarmKeys.pressed(event, alarms)) {
            return;
        }
        event.consume();
    }

    /** What was saved in this sitting is taken back at once; of what was written before, the keeper chooses. */
    private void undo() {
        if (deeds.isVisible() || model.undoProperty().get().isEmpty()) {
            turn(deeds);
        } else {
            model.undo();
        }
    }

    private void typed(KeyEvent event) {
        if (event.getCharacter().equals("?") && !Keys.goToText(event)) {
            turn(keySheet);
            event.consume();
        }
    }

    private static void turn(OverSheet sheet) {
        if (sheet.isVisible()) {
            sheet.close();
        } else {
            sheet.open();
        }
    }
}

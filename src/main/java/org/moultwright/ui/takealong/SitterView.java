package org.moultwright.ui.takealong;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.text.SitterWords;
import org.moultwright.ui.alarm.AlarmBanner;
import org.moultwright.ui.alarm.AlarmKeys;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** The whole window while a sitter has the desk: trays at the left, whom to call and what never to do at the right. */
public final class SitterView extends BorderPane {
    private static final KeyCombination UNDO = new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    private static final String NOBODY = Texts.say("The keeper wrote no number here. Look on the sitter's sheet.");
    private static final String SURE = Texts.say("Are you the keeper?");
    private static final String THEN =
            Texts.say("The desk then shows everything again, and everything can be written.");

    private final SitterViewModel model;
    private final VBox trays = new VBox();
    private final VBox side = new VBox();
    private final Banner sure = new Banner(Tone.WARN);

    public SitterView(SitterViewModel model) {
        this.model = model;
        trays.getStyleClass().add("sitter-trays");
        side.getStyleClass().add("sitter-side");
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        Scrolled left = new Scrolled(Texts.say("the trays"), trays);
        Scrolled right = new Scrolled(Texts.say("whom to call, what to do"), side);
        right.getStyleClass().add("sitter-right");
        HBox.setHgrow(left, Priority.ALWAYS);
        Columns columns = new Columns(left, right);
        columns.getStyleClass().add("sitter-columns");
        PageHeader header = new PageHeader(SitterWords.TITLE);
        header.subtitleProperty().set(model.today());
        VBox page = new VBox(header, problem, columns, sure, foot());
        VBox.setVgrow(columns, Priority.ALWAYS);
        page.getStyleClass().add("page");
        setTop(new AlarmBanner(model.desk().alarms()));
        setCenter(page);
        getStyleClass().addAll("shell", "sitter");
        model.trays().addListener((ListChangeListener<SitterTray>) change -> show());
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        show();
    }

    /** Puts the sitter's hands on the first tray. */
    public void takeFocus() {
        deeds().findFirst().ifPresent(Node::requestFocus);
    }

    private void show() {
        Optional<Object> focused = deeds().filter(Node::isFocused).findFirst().map(Node::getUserData);
        List<Node> rows = model.trays().stream().map(this::row).toList();
        trays.getChildren().setAll(rows);
        if (rows.isEmpty()) {
            trays.getChildren()
                    .add(Words.wrapped(
                            Words.muted(Texts.say("No tray holds animals. There is nothing to look after."))));
        }
        side.getChildren()
                .setAll(
                        call(),
                        list(Texts.say("Never"), SitterWords.NEVER),
                        list(Texts.say("What to do"), SitterWords.TO_DO));
        refocus(focused);
    }

    /** The hand stays where it was: a second press is never another tray's. */
    private void refocus(Optional<Object> focused) {
        if (focused.isPresent()) {
            deeds().filter(deed -> focused.get().equals(deed.getUserData()))
                    .findFirst()
                    .ifPresent(Node::requestFocus);
        } else if (getScene() != null && getScene().getFocusOwner() == null) {
            takeFocus();
        }
    }

    private Stream<Node> deeds() {
        return trays.lookupAll(".sitter-deed").stream();
    }

    private Node row(SitterTray tray) {
        Label name = Words.whole(Words.styled(tray.tray(), "tray-name"));
        Label place = Words.muted(tray.view().place());
        Label alive = Words.muted(Texts.say("{0} alive", tray.view().alive()));
        Flow title = new Flow(name, place, alive);
        title.getStyleClass().add("sheet-title");
        VBox words = new VBox(title, Words.wrapped(Words.plain(tray.expected())));
        if (!tray.done().isEmpty()) {
            words.getChildren().add(Words.strong(Texts.say("Today: {0}", tray.done())));
        }
        HBox.setHgrow(words, Priority.ALWAYS);
        Button dead = deed(tray, Texts.say("One dead"), Texts.say("one animal found dead"), () -> model.dead(tray));
        dead.setDisable(tray.view().alive() == 0);
        Button water = deed(tray, Texts.say("Water given"), Texts.say("water given"), () -> model.watered(tray));
        Flow row = new Flow(words, dead, water);
        row.getStyleClass().addAll("card", "sitter-row");
        return row;
    }

    private static Button deed(SitterTray tray, String word, String accessible, Runnable action) {
        Button button = Buttons.secondary(word, action);
        button.setAccessibleText(tray.tray() + ", " + accessible);
        button.setUserData(List.of(tray.view().brood(), tray.tray(), word));
        button.getStyleClass().add("sitter-deed");
        return button;
    }

    private Node call() {
        String phone = model.desk().plans().settings().phone();
        Label number = Words.wrapped(phone.isBlank() ? Words.plain(NOBODY) : Words.styled(phone, "sitter-phone"));
        Card card = list(Texts.say("Call the keeper when"), model.call());
        card.getChildren().add(1, number);
        return card;
    }

    private static Card list(String title, List<String> sentences) {
        Card card = Card.titled(title);
        sentences.forEach(sentence -> card.getChildren().add(Words.wrapped(Words.plain("• " + sentence))));
        return card;
    }

    private Node foot() {
        Label said = Words.strong("");
        said.textProperty().bind(model.saidProperty());
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        Button back = Buttons.secondary(Texts.say("Take the last one back"), model::takeBack);
        back.disableProperty().bind(model.canTakeBackProperty().not());
        Button keeper = Buttons.plain(Texts.say("The keeper is back"), this::ask);
        keeper.getStyleClass().add("sitter-keeper");
        Flow foot = new Flow(said, back, keeper);
        foot.getStyleClass().add("page-actions");
        return foot;
    }

    private void ask() {
        Button no =
                Buttons.secondary(Texts.say("No"), () -> sure.sentenceProperty().set(""));
        sure.setActions(
                Buttons.secondary(Texts.say("Yes, take the desk back"), () -> {
                    sure.sentenceProperty().set("");
                    model.keeperTakesItBack();
                }),
                no);
        sure.detailProperty().set(THEN);
        sure.sentenceProperty().set(SURE);
        no.requestFocus();
    }

    private void pressed(KeyEvent event) {
        if (UNDO.match(event)) {
            model.takeBack();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            sure.sentenceProperty().set("");
        } else if (!AlarmKeys.pressed(event, model.desk().alarms())) {
            return;
        }
        event.consume();
    }
}

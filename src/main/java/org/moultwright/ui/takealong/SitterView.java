package org.moultwright.ui.takealong;

import java.util.List;
import java.util.Optional;
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
import org.moultwright.ui.control.MovingKeys;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.shell.PageHost;

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
        Scrolled left = new Scrolled(Texts.say("the trays"), trays);
        Scrolled right = new Scrolled(Texts.say("whom to call, what to do"), side);
        right.getStyleClass().add("sitter-right");
        HBox.setHgrow(left, Priority.ALWAYS);
        Columns columns = new Columns(left, right);
        columns.getStyleClass().add("sitter-columns");
        PageHeader header = new PageHeader(SitterWords.TITLE);
        header.subtitleProperty().bind(model.todayProperty());
        VBox page = new VBox(header, columns);
        VBox.setVgrow(columns, Priority.ALWAYS);
        page.getStyleClass().add("page");
        PageHost host = new PageHost();
        host.setContent(page);
        setTop(new AlarmBanner(model.desk().alarms()));
        setCenter(host);
        setBottom(foot());
        getStyleClass().addAll("shell", "sitter");
        setAccessibleText(SitterWords.TITLE);
        MovingKeys.of(this, left, host);
        model.trays().addListener((ListChangeListener<SitterTray>) change -> show());
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        show();
        side.getChildren()
                .setAll(
                        call(),
                        list(Texts.say("Never"), SitterWords.NEVER),
                        list(Texts.say("What to do"), SitterWords.TO_DO_AT_THE_DESK));
    }

    /** On the page itself, where no key writes anything; Tab leads to the first tray. */
    public void takeFocus() {
        requestFocus();
    }

    /** A tray's row stays the same one, so that nothing moves under a hand. */
    private void show() {
        List<Node> rows = model.trays().stream().map(this::row).toList();
        if (rows.isEmpty()) {
            trays.getChildren()
                    .setAll(Words.wrapped(
                            Words.muted(Texts.say("No tray holds animals. There is nothing to look after."))));
        } else if (!rows.equals(trays.getChildren())) {
            trays.getChildren().setAll(rows);
        }
    }

    private Node row(SitterTray tray) {
        Optional<SitterRow> known = trays.getChildren().stream()
                .filter(SitterRow.class::isInstance)
                .map(SitterRow.class::cast)
                .filter(row -> row.isOf(tray))
                .findFirst();
        known.ifPresent(row -> row.show(tray));
        return known.orElseGet(() -> new SitterRow(tray, model));
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

    /** Always in sight: what was written, and how it is taken back. */
    private Node foot() {
        Label said = Words.wrapped(Words.styled("", "strong", "sitter-said"));
        said.textProperty().bind(model.saidProperty());
        HBox.setHgrow(said, Priority.ALWAYS);
        said.setMaxWidth(Double.MAX_VALUE);
        Button back = Buttons.secondary(Texts.say("Take the last one back"), model::takeBack);
        back.disableProperty().bind(model.canTakeBackProperty().not());
        Button keeper = Buttons.plain(Texts.say("The keeper is back"), this::ask);
        keeper.getStyleClass().add("sitter-keeper");
        Flow line = new Flow(said, back, keeper);
        line.getStyleClass().add("page-actions");
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        VBox foot = new VBox(problem, sure, line);
        foot.getStyleClass().add("sitter-foot");
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

package org.moultwright.ui.finder;

import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.LineForms;

/** Lays out the page about an unknown port: what comes and which forms explain it left, the keeper's own form right. */
public final class FinderView extends VBox {
    private final FinderViewModel model;
    private final ComboBox<String> port = new ComboBox<>();
    private final VBox proposals = new VBox();

    public FinderView(FinderViewModel model) {
        this.model = model;
        PageHeader header =
                new PageHeader(Texts.say("Find out its lines"), Buttons.secondary(Texts.say("Back"), model::cancel));
        header.subtitleProperty().set(Texts.say("nothing is said over the wire while listening, and nothing is kept"));
        VBox left = new VBox(listening(), explained());
        left.getStyleClass().add("lines");
        HBox.setHgrow(left, Priority.ALWAYS);
        Columns columns = new Columns(left, new ProfileCard(model.profile()));
        columns.getStyleClass().add("card-row");
        VBox.setVgrow(columns, Priority.ALWAYS);
        getStyleClass().add("page");
        getChildren().addAll(header, columns);
        model.proposals().addListener((ListChangeListener<LineForms.Proposal>) change -> propose());
        propose();
    }

    public void takeFocus() {
        port.requestFocus();
    }

    private Node listening() {
        port.setEditable(true);
        port.setItems(model.ports());
        port.setAccessibleText(Texts.say("port"));
        port.getEditor().setAccessibleText(Texts.say("port"));
        port.getEditor().textProperty().bindBidirectional(model.portProperty());
        ChoiceBox<String> settings = new ChoiceBox<>();
        settings.setMinWidth(Region.USE_PREF_SIZE);
        settings.getItems().setAll(model.settings());
        settings.setAccessibleText(Texts.say("speed of the port"));
        settings.valueProperty().bindBidirectional(model.settingsProperty());
        Button listen = Buttons.primary(Texts.say("Listen"), model::listen);
        Button stop = Buttons.secondary(Texts.say("Stop"), model::stop);
        stop.disableProperty().bind(model.busyProperty().not());
        Flow row = new Flow(Words.whole(Words.plain(Texts.say("Port"))), port, settings, listen, stop);
        row.getStyleClass().add("line");
        Label told = Words.wrapped(Words.muted(""));
        told.textProperty().bind(model.toldProperty());
        ListView<String> lines = raw(
                Texts.say("what comes over the wire"),
                Texts.say("Nothing heard yet. Signs without sense mean another speed."));
        lines.setItems(model.lines());
        model.lines().addListener((ListChangeListener<String>)
                change -> lines.scrollTo(model.lines().size() - 1));
        VBox.setVgrow(lines, Priority.ALWAYS);
        Card card = Card.titled(Texts.say("What comes"), row, told, lines);
        VBox.setVgrow(card, Priority.ALWAYS);
        return card;
    }

    private Node explained() {
        ChoiceBox<String> other = new ChoiceBox<>();
        other.setMinWidth(Region.USE_PREF_SIZE);
        other.getItems().setAll(model.codes());
        other.setOnShowing(event -> other.getItems().setAll(model.codes()));
        other.setAccessibleText(Texts.say("another form"));
        other.getSelectionModel().selectFirst();
        Button tryOther = Buttons.secondary(Texts.say("Try it"), () -> model.tryForm(other.getValue()));
        tryOther.setAccessibleText(Texts.say("try the other form"));
        Flow another =
                new Flow(Words.whole(Words.plain(Texts.say("Another, such as one to be asked"))), other, tryOther);
        another.getStyleClass().add("line");
        ListView<String> tried =
                raw(Texts.say("what the form that is tried reads"), Texts.say("No form is being tried."));
        tried.setItems(model.tried());
        tried.setPrefHeight(96);
        tried.setMinHeight(60);
        proposals.getStyleClass().add("lines");
        Scrolled found = new Scrolled(proposals);
        found.setMinHeight(76);
        return Card.titled(Texts.say("Which forms explain it"), found, another, tried);
    }

    private void propose() {
        proposals.getChildren().clear();
        if (model.proposals().isEmpty()) {
            proposals
                    .getChildren()
                    .add(Words.wrapped(
                            Words.muted(Texts.say("No form of the program or of yours explains anything yet."))));
        }
        model.proposals().stream().limit(4).map(this::proposal).forEach(proposals.getChildren()::add);
    }

    private Node proposal(LineForms.Proposal proposal) {
        Label what = Words.wrapped(Words.plain(proposal.title()));
        Label reads = Words.wrapped(Words.caption(FinderWords.proposal(proposal)));
        VBox words = new VBox(what, reads);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button attempt = Buttons.plain(Texts.say("Try it"), () -> model.tryForm(proposal.profile()));
        attempt.setAccessibleText(Texts.say("try {0}", proposal.profile()));
        Button use = Buttons.plain(Texts.say("Use it"), () -> model.use(proposal.profile()));
        use.setAccessibleText(Texts.say("use {0}", proposal.profile()));
        use.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.portProperty().get().isBlank(), model.portProperty()));
        Flow row = new Flow(words, attempt, use);
        row.getStyleClass().add("line");
        return row;
    }

    private static ListView<String> raw(String name, String whenEmpty) {
        ListView<String> list = new ListView<>();
        list.getStyleClass().add("raw-lines");
        list.setAccessibleText(name);
        list.setPlaceholder(Words.wrapped(Words.muted(whenEmpty)));
        return list;
    }
}

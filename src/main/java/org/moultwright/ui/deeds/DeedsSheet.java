package org.moultwright.ui.deeds;

import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.shell.OverSheet;

/**
 * What was written down last, deed by deed, laid over the open screen: any of it can be taken back. Made when it is first
 * opened.
 */
public final class DeedsSheet extends OverSheet {
    private static final String MEANING =
            Texts.say("Nothing is erased: what is taken back stays in the book, marked as taken back. A deed "
                    + "that later ones rest on waits until those are.");

    private final DeedsViewModel model;
    private final ListView<DeedLine> list = new ListView<>();

    public DeedsSheet(DeedsDesk desk) {
        this.model = new DeedsViewModel(desk);
    }

    private Node card() {
        list.setItems(model.lines());
        list.setCellFactory(shown -> new DeedCell());
        list.setAccessibleText(Texts.say("What was written down, newest first"));
        list.setPlaceholder(Words.muted(Texts.say("Nothing was written down at this desk yet.")));
        list.getStyleClass().add("deed-list");
        list.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.DELETE) {
                takeBack();
                event.consume();
            }
        });
        model.lines().addListener((ListChangeListener<DeedLine>) change -> chooseNewest());
        Card card = Card.titled(
                Texts.say("Written down last"), Words.wrapped(Words.caption(MEANING)), said(), list, foot());
        card.getStyleClass().add("deed-sheet");
        card.setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        VBox.setVgrow(list, Priority.ALWAYS);
        return card;
    }

    @Override
    protected void opened() {
        if (getChildren().isEmpty()) {
            getChildren().add(card());
        }
        model.open();
        list.requestFocus();
    }

    private Node said() {
        Label news = Words.styled("", "strong");
        news.textProperty().bind(model.newsProperty());
        news.managedProperty().bind(news.textProperty().isNotEmpty());
        Banner problem = new Banner(Tone.WARN);
        problem.sentenceProperty().bind(model.problemProperty());
        return new VBox(Words.wrapped(news), problem);
    }

    private Node foot() {
        Button takeBack = Buttons.primary(Texts.say("Take back"), this::takeBack);
        takeBack.disableProperty().bind(Bindings.isNull(list.getSelectionModel().selectedItemProperty()));
        Flow foot = new Flow(takeBack, Buttons.secondary(Texts.say("Close"), this::close));
        foot.getStyleClass().add("banner-actions");
        return foot;
    }

    private void chooseNewest() {
        int chosen = Math.max(0, list.getSelectionModel().getSelectedIndex());
        list.getSelectionModel().select(Math.min(chosen, list.getItems().size() - 1));
    }

    private void takeBack() {
        Optional.ofNullable(list.getSelectionModel().getSelectedItem()).ifPresent(model::takeBack);
    }
}

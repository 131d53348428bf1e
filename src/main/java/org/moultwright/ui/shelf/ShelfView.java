package org.moultwright.ui.shelf;

import java.util.List;
import java.util.Optional;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Ageing;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out the shelf: containers in each other at the left, the card that has the focus at the right. */
final class ShelfView extends VBox {
    private static final double NARROWEST_CARD_EMS = 15.667;
    private static final double FRAMES_EMS = 4;

    private final ShelfViewModel model;
    private final ListView<ShelfRow> cards = new ListView<>();
    private final Em type = new Em();
    private final VBox side = new VBox();
    private final VBox moved = new VBox();
    private final Columns columns;
    private final EmptyShelf empty;
    private Optional<FormCard> filledIn = Optional.empty();
    private Optional<DetailCard> detail = Optional.empty();

    /** While the mouse is held down nothing may scroll away from under it. */
    private boolean isHeldDown;

    /** The card that had the focus last and what it stood in: it is brought into sight where either is another. */
    private List<String> followed = List.of();

    private final Runnable reveal = this::reveal;

    /** Whether the keeper's hands are to be put on the cards as soon as there are any. */
    private boolean awaitsCards;

    ShelfView(ShelfViewModel model) {
        this.model = model;
        this.columns = columns();
        this.empty = new EmptyShelf(model);
        PageHeader header = header();
        getStyleClass().addAll("page", "shelf");
        getChildren()
                .addAll(
                        header,
                        banner(Tone.OK, model.deeds().doneProperty()),
                        banner(Tone.BAD, model.deeds().problemProperty()),
                        empty,
                        columns,
                        type);
        model.shelfProperty().addListener((observed, before, now) -> show());
        model.airedProperty().addListener((observed, before, now) -> showAir());
        Ageing.whileSeen(this, model::age);
        sceneProperty().addListener((observed, before, now) -> stand(before, now));
        model.focusProperty().addListener((observed, before, now) -> focusMoved());
        model.columnsProperty().addListener(changed -> revealOnceLaidOut(getScene()));
        model.formProperty().addListener((observed, before, now) -> showSide());
        model.vocabularyProperty().addListener((observed, before, now) -> {
            cards.refresh();
            showSide();
        });
        show();
    }

    /** Puts the keeper's hands into the form that is open, else on the cards; while there are none, on the way to them. */
    void takeFocus() {
        awaitsCards = !columns.isVisible();
        if (filledIn.isPresent()) {
            filledIn.get().takeFocus();
        } else if (awaitsCards) {
            empty.takeFocus();
        } else {
            cards.requestFocus();
        }
    }

    private PageHeader header() {
        DayPicker day = new DayPicker(Texts.say("day shown"), model.dayProperty()).upTo(model::today);
        day.input().setPromptText(Texts.say("another date"));
        Button tonight = Buttons.secondary(Texts.say("Back to tonight"), () -> {
            model.toTonight();
            takeFocus();
        });
        Button add = Buttons.secondary(Texts.say("Add a container"), model::openAdd);
        PageHeader header = new PageHeader(Texts.say("Shelf"), day, tonight, add);
        Runnable tell = () -> {
            header.subtitleProperty()
                    .set(
                            model.isPast()
                                    ? Texts.say(
                                            "as it stood at the end of {0}, read only. What stands above is of now.",
                                            model.days()
                                                    .longDay(model.shelfProperty()
                                                            .get()
                                                            .at()))
                                    : Texts.say("as it stands tonight"));
            show(tonight, model.isPast());
            show(add, !model.isPast());
        };
        model.shelfProperty().addListener((observed, before, now) -> tell.run());
        tell.run();
        return header;
    }

    private Columns columns() {
        cards.getStyleClass().addAll("bare", "shelf-list");
        cards.setItems(model.rows());
        cards.setCellFactory(list -> new ShelfCell(model));
        cards.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (ShelfKeys.pressed(event, model)) {
                event.consume();
            }
        });
        cards.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> {
            isHeldDown = true;
            cards.requestFocus();
        });
        cards.addEventFilter(MouseEvent.MOUSE_RELEASED, event -> isHeldDown = false);
        // What is carried is let go without the mouse being told, nor the list where the card taken went out of sight.
        List.of(DragEvent.DRAG_DONE, DragEvent.DRAG_DROPPED, MouseEvent.MOUSE_MOVED)
                .forEach(sort -> cards.addEventFilter(sort, event -> isHeldDown = false));
        new EdgeScroll(cards, type, hand -> model.carryOver(under(hand)));
        cards.widthProperty().addListener(changed -> chooseColumns());
        type.fontProperty().addListener(changed -> chooseColumns());
        HBox.setHgrow(cards, Priority.ALWAYS);
        side.getStyleClass().add("shelf-side");
        moved.getStyleClass().add("card");
        VBox right = new VBox(side, moved);
        right.getStyleClass().add("shelf-side");
        Scrolled scrolled = new Scrolled(right);
        scrolled.getStyleClass().add("shelf-right");
        Columns both = new Columns(cards, scrolled);
        both.getStyleClass().add("shelf-columns");
        VBox.setVgrow(both, Priority.ALWAYS);
        return both;
    }

    private Optional<String> under(Point2D hand) {
        return cards.lookupAll(".shelf-cell").stream()
                .map(ShelfCell.class::cast)
                .flatMap(cell -> cell.under(hand).stream())
                .findFirst();
    }

    private void chooseColumns() {
        double ems = cards.getWidth() / type.pixels();
        model.columnsProperty().set(Math.max(1, (int) ((ems - FRAMES_EMS) / NARROWEST_CARD_EMS)));
    }

    private void show() {
        boolean nothing = model.shelfProperty().get().outermost().isEmpty();
        boolean isForm = model.formProperty().get().isPresent();
        boolean cardsGo = cards.isFocused() && nothing && !isForm;
        empty.show();
        show(columns, !nothing || isForm);
        show(empty, nothing && !isForm);
        if (cardsGo || (awaitsCards && columns.isVisible())) {
            takeFocus();
        }
        moved.getChildren().setAll(Words.cardTitle(Texts.say("Moved lately")));
        List<ShelfWords.Moved> lately = ShelfWords.moved(
                model.room().shelf(), model.shelfProperty().get().at(), model.days());
        lately.forEach(one -> moved.getChildren().add(movedRow(one)));
        moved.getChildren()
                .add(Words.wrapped(Words.caption(Texts.say("Each tray's warm-days follow it wherever it stood."))));
        cards.refresh();
        showSide();
        focusMoved();
    }

    /** Not while something is carried: what is under the mouse stays as it is. */
    private void showAir() {
        if (!isHeldDown) {
            cards.refresh();
            detail.ifPresent(DetailCard::showAir);
            tellFocused();
        }
    }

    private static HBox movedRow(ShelfWords.Moved one) {
        Label day = Words.muted(one.day());
        day.getStyleClass().add("story-day");
        Flow row = new Flow(day, Words.wrapped(Words.plain(one.what())));
        row.getStyleClass().add("story-row");
        return row;
    }

    /** A form stays as it is while it is filled in; the card behind it may change. */
    private void showSide() {
        Optional<ShelfForm> form = model.formProperty().get();
        boolean isNew = form.isPresent() && !form.equals(filledIn.map(FormCard::form));
        if (isNew) {
            FormCard card =
                    new FormCard(model, form.get(), model.vocabularyProperty().get());
            filledIn = Optional.of(card);
            side.getChildren().setAll(card);
            show(columns, true);
            show(empty, false);
            card.focusFirst();
        } else if (form.isEmpty()) {
            boolean wasOpen = filledIn.isPresent();
            filledIn = Optional.empty();
            detail = model.focused()
                    .map(standing -> new DetailCard(
                            model, standing, model.vocabularyProperty().get()));
            side.getChildren().setAll(detail.stream().toList());
            if (wasOpen) {
                boolean nothing = model.shelfProperty().get().outermost().isEmpty();
                show(columns, !nothing);
                show(empty, nothing);
                takeFocus();
            }
        }
    }

    private void focusMoved() {
        tellFocused();
        cards.getSelectionModel().clearSelection();
        List<String> place = model.focused()
                .map(standing -> List.of(standing.code(), standing.inside().orElse("")))
                .orElse(List.of());
        if (!place.equals(followed)) {
            followed = place;
            revealOnceLaidOut(getScene());
        }
        if (model.formProperty().get().isEmpty()) {
            showSide();
        }
    }

    private void tellFocused() {
        cards.setAccessibleText(model.focused()
                .map(model::aired)
                .map(standing ->
                        ShelfWords.card(standing, model.vocabularyProperty().get()))
                .orElse(Texts.say("shelf")));
    }

    private void stand(@Nullable Scene before, @Nullable Scene now) {
        if (before != null) {
            before.removePostLayoutPulseListener(reveal);
        }
        revealOnceLaidOut(now);
    }

    /** Rows laid anew are in sight, or not, only once the list has placed them. */
    private void revealOnceLaidOut(@Nullable Scene scene) {
        if (scene != null) {
            scene.removePostLayoutPulseListener(reveal);
            scene.addPostLayoutPulseListener(reveal);
        }
    }

    /** Scrolls to the card that has the focus unless it is in sight. */
    private void reveal() {
        if (cards.isNeedsLayout()) {
            return;
        }
        getScene().removePostLayoutPulseListener(reveal);
        int row = model.focusedRow();
        if (row >= 0 && !isHeldDown && !ShelfSight.of(cards).shows(row)) {
            cards.scrollTo(row);
        }
    }

    private static void show(Node node, boolean visible) {
        node.setVisible(visible);
        node.setManaged(visible);
    }

    private static Banner banner(Tone tone, ObservableValue<String> sentence) {
        Banner banner = new Banner(tone);
        banner.sentenceProperty().bind(sentence);
        return banner;
    }
}

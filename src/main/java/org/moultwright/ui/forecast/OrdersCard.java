package org.moultwright.ui.forecast;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.settings.PlanSettings;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Refusable;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;

/** What to order by when, and how long it takes to come. */
final class OrdersCard {
    private static final String RULE =
            Texts.say("Pots and labels are there the day before the first slings, food the day before the first "
                    + "meal, a week later: common practice, no source.");

    private final OrdersViewModel orders;

    private OrdersCard(OrdersViewModel orders) {
        this.orders = orders;
    }

    static Card of(OrdersViewModel orders) {
        OrdersCard card = new OrdersCard(orders);
        Label nothing = Lines.sentence("");
        nothing.textProperty().bind(orders.nothingProperty());
        nothing.managedProperty().bind(nothing.textProperty().isNotEmpty());
        VBox words = new VBox(nothing, Lines.of(orders.lines(), OrdersCard::line));
        words.getStyleClass().add("lines");
        VBox left = new VBox(new Scrolled(Texts.say("what to order"), words));
        left.setMinWidth(0);
        HBox.setHgrow(left, Priority.ALWAYS);
        Columns both = new Columns(left, card.terms());
        both.getStyleClass().add("what-if-columns");
        VBox.setVgrow(both, Priority.ALWAYS);
        return Card.titled(Texts.say("What to order"), both);
    }

    private static List<Node> line(OrdersViewModel.Line line) {
        Label brood = Words.strong(line.brood());
        brood.getStyleClass().add("order-brood");
        VBox sentences = new VBox(Lines.sentence(line.pots()), Lines.sentence(line.food()));
        HBox.setHgrow(sentences, Priority.ALWAYS);
        return List.of(new Flow(brood, sentences));
    }

    private VBox terms() {
        VBox terms = new VBox(
                SafetyChips.of(Texts.say("in time"), orders.plans().safetyProperty()),
                days(Texts.say("pots and labels take"), PlanSettings::potDays, orders::potDays),
                days(Texts.say("food takes"), PlanSettings::foodDays, orders::foodDays),
                Words.wrapped(Words.caption(RULE)));
        terms.getStyleClass().addAll("lines", "order-terms");
        return terms;
    }

    /** Taken when the field is left, or at Enter. What was not taken stands there until it is mended. */
    private Refusable days(String what, ToIntFunction<PlanSettings> kept, UnaryOperator<String> take) {
        TextField field = new TextField();
        field.setAccessibleText(Texts.say("{0}, days", what));
        field.getStyleClass().addAll("short-field", "days-field");
        Flow row = new Flow(Words.plain(what), field, Words.muted(Texts.say("days")));
        row.getStyleClass().add("card-head");
        Refusable refusable = new Refusable(row, field);
        Runnable show = () -> {
            if (refusable.problemProperty().get().isEmpty()) {
                field.setText(Integer.toString(kept.applyAsInt(orders.plans().settings())));
            }
        };
        orders.plans().settingsProperty().addListener((observed, before, now) -> show.run());
        show.run();
        Runnable read = () -> {
            refusable.problemProperty().set(take.apply(field.getText()));
            show.run();
        };
        field.setOnAction(event -> read.run());
        field.focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                read.run();
            }
        });
        return refusable;
    }
}

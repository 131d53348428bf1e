package org.moultwright.ui.instrument;

import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFoot;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** Lays out the page on which a probe is calibrated: points at the left, what they come to at the right. */
public final class CalibrationView extends VBox {
    private final CalibrationViewModel model;
    private final PointGrid points;

    public CalibrationView(CalibrationViewModel model, ObservableObjectValue<Palette> palette) {
        this.model = model;
        this.points = new PointGrid(model);
        Button keep = Buttons.primary(Texts.say("Keep this calibration"), model::keep);
        keep.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.draftProperty().get().isEmpty(), model.draftProperty()));
        PageHeader header = new PageHeader(
                Texts.say("Calibrate {0}", model.probe()), Buttons.secondary(Texts.say("Back"), model::cancel));
        header.subtitleProperty().set(Texts.say("readings stay as they came; the correction is put on them"));
        Banner caution = new Banner(Tone.ACCENT);
        caution.sentenceProperty().bind(model.form().quantityProperty().map(CalibrationView::caution));
        Banner problem = new Banner(Tone.BAD);
        problem.sentenceProperty().bind(model.problemProperty());
        VBox left = new VBox(pointCard(), whenCard());
        left.getStyleClass().add("lines");
        left.getStyleClass().add("calibration-form");
        HBox.setHgrow(left, Priority.ALWAYS);
        FittedCard fitted = new FittedCard(model, palette);
        VBox.setVgrow(fitted, Priority.ALWAYS);
        // Beside the points, which need the height.
        VBox right = new VBox(fitted, new FormFoot(keep));
        right.getStyleClass().addAll("lines", "calibration-side");
        HBox.setHgrow(right, Priority.ALWAYS);
        Columns columns = new Columns(left, right);
        columns.getStyleClass().add("card-row");
        VBox.setVgrow(columns, Priority.ALWAYS);
        getStyleClass().add("page");
        getChildren().addAll(header, caution, problem, columns);
    }

    /** Puts the keeper's hands on the first number to be written. */
    public void takeFocus() {
        points.takeFocus();
    }

    private static String caution(Quantity quantity) {
        return quantity == Quantity.TEMPERATURE
                ? Texts.say("Hot water scalds and glass cracks: stir with a spoon, never with glass, and keep mains "
                        + "plugs away from water.")
                : Texts.say("Salts are not food: gloves on, jars of glass on a tray, lids closed, away from animals "
                        + "and mains plugs.");
    }

    private Node pointCard() {
        FlowPane quantities = chips();
        ChoiceGroup<Quantity> group =
                new ChoiceGroup<>(model.form().quantityProperty(), model.form().quantityProperty()::set);
        chip(group, quantities, Texts.say("Temperature"), Quantity.TEMPERATURE);
        chip(group, quantities, Texts.say("Humidity"), Quantity.HUMIDITY);
        Flow adding = new Flow();
        adding.getStyleClass().add("line");
        Runnable offer = () -> adding.getChildren()
                .setAll(List.of(PointEntry.Kind.values()).stream()
                        .filter(kind -> kind.quantity()
                                == model.form().quantityProperty().get())
                        .map(kind ->
                                Buttons.plain(Texts.say("Add: {0}", kind.word().toLowerCase(Locale.ROOT)), () -> {
                                    model.form().add(kind);
                                    points.takeFocusAtLast();
                                }))
                        .toList());
        model.form().quantityProperty().addListener((observed, before, now) -> offer.run());
        offer.run();
        Label how = Words.wrapped(Words.caption(""));
        how.textProperty().bind(model.form().quantityProperty().map(CalibrationView::how));
        return Card.titled(Texts.say("Points"), quantities, how, new Scrolled(points), adding);
    }

    private static String how(Quantity quantity) {
        return quantity == Quantity.TEMPERATURE
                ? Texts.say(
                        "Crushed ice just covered with cold water is {0}: stir, and wait until the probe stands "
                                + "still. Or lay it beside a thermometer you believe, at temperatures at least {1} apart.",
                        Degrees.words(0, 0), Degrees.apartWords(4, 0))
                : Texts.say(
                        "A closed jar of wet salt keeps one humidity (OIML R 121). Wait some hours at {0} to {1} "
                                + "until the probe stands still.",
                        Degrees.number(20, 0), Degrees.words(30, 0));
    }

    private Node whenCard() {
        FlowPane from = chips();
        ChoiceGroup<CalibrationForm.From> group =
                new ChoiceGroup<>(model.form().fromProperty(), model.form().fromProperty()::set);
        for (CalibrationForm.From each : CalibrationForm.From.values()) {
            chip(group, from, each.word(), each);
        }
        DayPicker day = new DayPicker(Texts.say("holds from"), model.form().fromDayProperty());
        day.visibleProperty().bind(model.form().fromProperty().isEqualTo(CalibrationForm.From.DAY));
        day.managedProperty().bind(day.visibleProperty());
        from.getChildren().add(day);
        TextField note = new TextField();
        note.setAccessibleText(Texts.say("note"));
        note.textProperty().bindBidirectional(model.form().noteProperty());
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.addRow(0, Words.whole(Words.plain(Texts.say("It holds"))), from);
        Flow months = new Flow(
                new MeasuredField(model.form().lifeMonths()),
                Words.muted(Texts.say("months (common practice, no source)")));
        months.getStyleClass().add("line");
        grid.addRow(1, Words.whole(Words.plain(Texts.say("Do it again after"))), months);
        grid.addRow(2, Words.whole(Words.plain(Texts.say("Note"))), note);
        GridPane.setHgrow(note, Priority.ALWAYS);
        return Card.titled(Texts.say("From when, for how long"), grid);
    }

    private static FlowPane chips() {
        FlowPane pane = new FlowPane();
        pane.getStyleClass().addAll("chips", "tight");
        return pane;
    }

    private static <T> void chip(ChoiceGroup<T> group, FlowPane pane, String word, T value) {
        ToggleChip chip = new ToggleChip(word);
        group.add(chip, value);
        pane.getChildren().add(chip);
    }
}

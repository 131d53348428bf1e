package org.moultwright.ui.forecast;

import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;

/** The slider that tries a set-point on, and beside it the dates of the tray chosen under a few of them. */
final class WhatIfCard {
    private static final String AS_IT_IS =
            Texts.say("Move the slider to see every lane under another set-point from now on, kept as well as "
                    + "it was lately. Nothing is changed.");

    private final ForecastViewModel model;
    private final WhatIfViewModel whatIf;

    private WhatIfCard(ForecastViewModel model) {
        this.model = model;
        this.whatIf = model.whatIf();
    }

    static Columns of(ForecastViewModel model) {
        WhatIfCard card = new WhatIfCard(model);
        VBox hand = card.hand();
        HBox.setHgrow(hand, Priority.ALWAYS);
        Columns both = new Columns(hand, card.table());
        both.getStyleClass().add("what-if-columns");
        return both;
    }

    private VBox hand() {
        Slider slider = slider();
        Label reading = Words.styled("", "what-if-reading");
        reading.textProperty()
                .bind(Bindings.createStringBinding(
                        this::reading, whatIf.celsiusProperty(), whatIf.activeProperty(), model.chosenProperty()));
        reading.setMinWidth(Region.USE_PREF_SIZE);
        Button back = Buttons.secondary(Texts.say("Back to as it is"), () -> {
            slider.requestFocus();
            whatIf.backToAsItIs();
        });
        back.getStyleClass().add("small-button");
        back.disableProperty().bind(whatIf.activeProperty().not());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Flow head = new Flow(reading, gap, back);
        head.getStyleClass().add("card-head");
        Label sentence = Lines.sentence("");
        sentence.textProperty()
                .bind(Bindings.createStringBinding(this::sentence, model.changeProperty(), whatIf.problemProperty()));
        VBox hand = new VBox(head, slider, ends(), sentence);
        hand.getStyleClass().addAll("lines", "what-if-hand");
        return hand;
    }

    /** The ends of the slider in words of its own: the toolkit's numbers keep the colour of the theme before. */
    private static HBox ends() {
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        return new Flow(
                Words.caption(Temperatures.words(WhatIfViewModel.LOWEST_CELSIUS)),
                between,
                Words.caption(Temperatures.words(WhatIfViewModel.HIGHEST_CELSIUS)));
    }

    private Slider slider() {
        Slider slider = new Slider(
                WhatIfViewModel.LOWEST_CELSIUS,
                WhatIfViewModel.HIGHEST_CELSIUS,
                whatIf.celsiusProperty().get());
        slider.setBlockIncrement(Temperatures.tenthCelsius());
        slider.valueProperty().bindBidirectional(whatIf.celsiusProperty());
        slider.accessibleTextProperty()
                .bind(Bindings.createStringBinding(
                        () -> Texts.say("what-if set-point, {0}", reading()),
                        whatIf.celsiusProperty(),
                        whatIf.activeProperty()));
        slider.setOnKeyPressed(pressed -> {
            if (pressed.getCode() == KeyCode.ESCAPE && whatIf.activeProperty().get()) {
                whatIf.backToAsItIs();
                pressed.consume();
            }
        });
        return slider;
    }

    private String reading() {
        if (whatIf.activeProperty().get()) {
            return Texts.say(
                    "what if {0}", Temperatures.words(whatIf.celsiusProperty().get()));
        }
        return whatIf.asItIsCelsius().isPresent()
                ? Texts.say(
                        "{0}, as it is",
                        Temperatures.words(whatIf.asItIsCelsius().getAsDouble()))
                : Texts.say("as it is");
    }

    private String sentence() {
        String problem = whatIf.problemProperty().get();
        if (!problem.isEmpty()) {
            return problem;
        }
        String change = model.changeProperty().get();
        return change.isEmpty() ? AS_IT_IS : change;
    }

    private VBox table() {
        Label title = Words.wrapped(Words.muted(""));
        Label window = Words.caption(Texts.say("80 % window"));
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        Runnable show = () -> {
            title.setText(model.tableTitle());
            grid.getChildren().clear();
            String instead = model.table().insteadProperty().get();
            if (!instead.isEmpty()) {
                grid.addRow(0, Words.wrapped(Words.muted(instead)));
            }
            model.table()
                    .rows()
                    .forEach(row -> grid.addRow(
                            grid.getRowCount(),
                            Words.whole(Words.strong(row.celsius())),
                            Words.styled(row.days(), "what-if-days")));
            window.setVisible(!model.table().rows().isEmpty());
        };
        model.table().rows().addListener((ListChangeListener<SetPointTable.Row>) change -> show.run());
        model.table().insteadProperty().addListener((observed, before, now) -> show.run());
        model.chosenProperty().addListener((observed, before, now) -> show.run());
        show.run();
        VBox table = new VBox(title, new Scrolled(Texts.say("dates under other set-points"), grid), window);
        table.getStyleClass().addAll("lines", "what-if-table");
        return table;
    }
}

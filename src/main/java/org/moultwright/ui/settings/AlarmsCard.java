package org.moultwright.ui.settings;

import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.settings.AlarmSettings;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Words;

/** From which temperatures on the keeper is woken. */
final class AlarmsCard extends VBox {
    private static final int COLUMNS = 5;
    private static final String WRONG = "has-problem";

    private final SettingsViewModel model;
    private final TextField veryHigh = field(Texts.say("far too warm above, {0}", Degrees.symbol()));
    private final TextField high = field(Texts.say("too warm above, {0}", Degrees.symbol()));
    private final TextField low = field(Texts.say("too cool below, {0}", Degrees.symbol()));
    private final TextField veryLow = field(Texts.say("far too cold below, {0}", Degrees.symbol()));
    private final Label problem = Words.wrapped(Words.styled("", "bad"));

    AlarmsCard(SettingsViewModel model) {
        this.model = model;
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.addRow(
                0,
                Words.plain(Texts.say("Far too warm above")),
                veryHigh,
                Words.caption(Texts.say("{0}, after a minute", Degrees.symbol())));
        grid.addRow(
                1,
                Words.plain(Texts.say("Too warm above")),
                high,
                Words.caption(Texts.say("{0}, after five minutes", Degrees.symbol())));
        grid.addRow(
                2,
                Words.plain(Texts.say("Too cool below")),
                low,
                Words.caption(Texts.say("{0}, after five minutes", Degrees.symbol())));
        grid.addRow(
                3,
                Words.plain(Texts.say("Far too cold below")),
                veryLow,
                Words.caption(Texts.say("{0}, after a minute", Degrees.symbol())));
        ChoiceRow<Boolean> walls = new ChoiceRow<>(
                List.of(true, false),
                watched -> watched ? Texts.say("Warn") : Texts.say("Do not warn"),
                model.settingsProperty().map(settings -> settings.alarms().isWallWatched()),
                watched -> model.choose(alarms().wallWatched(watched)));
        grid.addRow(
                4, Words.plain(Texts.say("Water on a wall")), walls, Words.caption(Texts.say("after half an hour")));
        problem.managedProperty().bind(problem.textProperty().isNotEmpty());
        getChildren()
                .add(Card.titled(
                        Texts.say("Alarms"),
                        Words.wrapped(Words.muted(Texts.say(
                                "In a container with a set-point these move along with it: they are meant for {0}. None "
                                        + "rises above far too warm.",
                                Degrees.words(27, 0)))),
                        grid,
                        Words.wrapped(Words.caption(Texts.say(
                                "Water is looked for where you said on the climate screen how cold the wall is."))),
                        problem));
        show();
    }

    private AlarmSettings alarms() {
        return model.settingsProperty().get().alarms();
    }

    private void show() {
        AlarmLimits limits = alarms().limits();
        veryHigh.setText(text(limits.veryHighCelsius()));
        high.setText(text(limits.highCelsius()));
        low.setText(text(limits.lowCelsius()));
        veryLow.setText(text(limits.veryLowCelsius()));
    }

    /** Kept once the four make sense together; until then what was written stays to be mended. */
    private void keep() {
        try {
            AlarmLimits limits = new AlarmLimits(celsius(veryLow), celsius(low), celsius(high), celsius(veryHigh));
            tell("");
            model.choose(alarms().withLimits(limits));
        } catch (IllegalArgumentException notInOrder) {
            tell(Texts.say("Not kept: write four temperatures, each below the one above it."));
        }
    }

    /** Marks the fields to be mended: what is no temperature, and what is not below the last one that is. */
    private void tell(String sentence) {
        problem.setText(sentence);
        double above = Double.POSITIVE_INFINITY;
        for (TextField field : List.of(veryHigh, high, low, veryLow)) {
            OptionalDouble celsius = read(field);
            boolean isWrong = !sentence.isEmpty() && (celsius.isEmpty() || celsius.getAsDouble() >= above);
            field.getStyleClass().remove(WRONG);
            if (isWrong) {
                field.getStyleClass().add(WRONG);
            }
            field.setAccessibleHelp(isWrong ? sentence : "");
            above = celsius.orElse(above);
        }
    }

    private static OptionalDouble read(TextField field) {
        try {
            return OptionalDouble.of(celsius(field));
        } catch (NumberFormatException notANumber) {
            return OptionalDouble.empty();
        }
    }

    private TextField field(String name) {
        TextField field = new TextField();
        field.setAccessibleText(name);
        field.setPrefColumnCount(COLUMNS);
        field.setOnAction(event -> keep());
        field.focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                keep();
            }
        });
        return field;
    }

    private static double celsius(TextField field) {
        return Degrees.celsius(Double.parseDouble(field.getText().strip().replace(',', '.')));
    }

    private static String text(double celsius) {
        return Degrees.shortest(celsius, 3);
    }
}

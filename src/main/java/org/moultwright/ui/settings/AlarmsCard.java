package org.moultwright.ui.settings;

import java.util.List;
import java.util.OptionalDouble;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.settings.AlarmSettings;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Typed;
import org.moultwright.ui.control.Words;

/** From which temperatures on the keeper is woken. */
final class AlarmsCard extends VBox {
    private static final Typable TEMPERATURE = Typable.signedNumber(3, 3);

    private final SettingsViewModel model;
    private final EntryField veryHigh = field(Texts.say("far too warm above, {0}", Degrees.symbol()));
    private final EntryField high = field(Texts.say("too warm above, {0}", Degrees.symbol()));
    private final EntryField low = field(Texts.say("too cool below, {0}", Degrees.symbol()));
    private final EntryField veryLow = field(Texts.say("far too cold below, {0}", Degrees.symbol()));
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
        veryHigh.textProperty().set(text(limits.veryHighCelsius()));
        high.textProperty().set(text(limits.highCelsius()));
        low.textProperty().set(text(limits.lowCelsius()));
        veryLow.textProperty().set(text(limits.veryLowCelsius()));
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
        for (EntryField field : List.of(veryHigh, high, low, veryLow)) {
            OptionalDouble celsius = read(field);
            boolean isRight = celsius.isPresent() && celsius.getAsDouble() < above;
            field.mark(isRight ? "" : sentence);
            above = celsius.orElse(above);
        }
    }

    private static OptionalDouble read(EntryField field) {
        return Typed.temperature(field.textProperty().get());
    }

    private EntryField field(String name) {
        EntryField field = FormFields.quiet(new EntryField(name, TEMPERATURE), "number-field");
        field.input().setOnAction(event -> keep());
        field.input().focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                keep();
            }
        });
        return field;
    }

    private static double celsius(EntryField field) {
        return read(field).orElseThrow(() -> new IllegalArgumentException("no temperature"));
    }

    private static String text(double celsius) {
        return Degrees.shortest(celsius, 3);
    }
}

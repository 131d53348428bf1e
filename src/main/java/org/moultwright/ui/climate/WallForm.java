package org.moultwright.ui.climate;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.control.ChoiceBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.ColdestWall;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Typed;
import org.moultwright.ui.control.Words;

/** The small form in which the keeper says how cold the coldest wall is. */
final class WallForm extends VBox {
    private static final Typable KELVIN = Typable.number(2, 1);
    private static final String NO_PROBE = Texts.say("no probe");

    private final ClimateViewModel model;
    private final Runnable close;
    private final ChoiceBox<String> probe = new ChoiceBox<>();
    private final EntryField below = field(Texts.say("wall below the air, {0}", Degrees.symbol()));
    private final EntryField sd = field(Texts.say("give or take, {0}", Degrees.symbol()));

    WallForm(ClimateViewModel model, Runnable close) {
        probe.setMinWidth(Region.USE_PREF_SIZE);
        this.model = model;
        this.close = close;
        probe.setAccessibleText(Texts.say("probe on the wall"));
        probe.getItems().add(NO_PROBE);
        model.probes().stream()
                .map(ProbeRow::probe)
                .filter(code -> !code.equals(model.chosenProperty().get()))
                .forEach(probe.getItems()::add);
        Optional<ColdestWall> said = model.wall();
        probe.setValue(said.flatMap(ColdestWall::probe).orElse(NO_PROBE));
        below.textProperty()
                .set(Degrees.apart(said.map(ColdestWall::belowAirCelsius).orElse(1.5), 1));
        sd.textProperty().set(Degrees.apart(said.map(ColdestWall::sdCelsius).orElse(1.0), 1));
        below.disableProperty().bind(probe.valueProperty().isNotEqualTo(NO_PROBE));
        sd.disableProperty().bind(below.disableProperty());
        Flow numbers = new Flow(below, Words.muted("±"), sd, Words.muted(Degrees.symbol()));
        numbers.getStyleClass().add("line");
        Flow answers = new Flow(
                Buttons.plain(Texts.say("Keep"), this::keep),
                Buttons.plain(Texts.say("Unknown"), () -> end(Optional.empty())),
                Buttons.plain(Texts.say("Back"), close));
        getStyleClass().add("lines");
        getChildren()
                .addAll(
                        Words.strong(Texts.say("The coldest wall")),
                        Words.caption(Texts.say("probe that lies on it")),
                        probe,
                        Words.caption(Texts.say("or so far below the air")),
                        numbers,
                        answers);
    }

    void takeFocus() {
        probe.requestFocus();
    }

    private void keep() {
        if (!probe.getValue().equals(NO_PROBE)) {
            end(Optional.of(ColdestWall.measuredBy(probe.getValue())));
            return;
        }
        Optional<Double> kelvin = number(below);
        Optional<Double> giveOrTake = number(sd);
        below.problemProperty()
                .set(
                        kelvin.filter(value -> value <= 30).isPresent()
                                ? ""
                                : Texts.say("Write 0 to {0}.", Degrees.apart(30, 0)));
        sd.problemProperty()
                .set(
                        giveOrTake.filter(value -> value <= 10).isPresent()
                                ? ""
                                : Texts.say("Write 0 to {0}.", Degrees.apart(10, 0)));
        if (below.problemProperty().get().isEmpty()
                && sd.problemProperty().get().isEmpty()) {
            end(Optional.of(ColdestWall.below(kelvin.orElseThrow(), giveOrTake.orElseThrow())));
        }
    }

    private void end(Optional<ColdestWall> wall) {
        model.say(wall);
        close.run();
    }

    private static Optional<Double> number(EntryField field) {
        OptionalDouble apart = Typed.number(field.textProperty().get());
        return apart.isPresent() ? Optional.of(Degrees.celsiusApart(apart.getAsDouble())) : Optional.empty();
    }

    private static EntryField field(String name) {
        EntryField field = new EntryField(name, KELVIN);
        field.getStyleClass().remove("big-entry");
        field.getStyleClass().add("wall-field");
        return field;
    }
}

package org.moultwright.ui.climate;

import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;

/** The form that connects a probe on a serial line. */
final class ConnectCard extends VBox {
    private final TextField probe = field(Texts.say("probe code"), "P-3");
    private final TextField port = field(Texts.say("port"), "/dev/ttyUSB0");
    private final TextField settings = field(Texts.say("settings of its lines"), "address=17");
    private final ChoiceBox<String> profile = new ChoiceBox<>();

    /** @param find leads to where it is found out how an unknown probe speaks */
    ConnectCard(ClimateViewModel model, Runnable find, Runnable close) {
        profile.setMinWidth(Region.USE_PREF_SIZE);
        profile.getItems().setAll(model.profiles());
        profile.getSelectionModel().selectFirst();
        profile.setAccessibleText(Texts.say("form of its lines"));
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.addRow(0, Words.plain(Texts.say("Code")), probe);
        grid.addRow(1, Words.plain(Texts.say("Port")), port);
        grid.addRow(2, Words.plain(Texts.say("Lines")), profile);
        grid.addRow(3, Words.plain(Texts.say("Settings")), settings);
        Button connect = Buttons.primary(Texts.say("Connect"), () -> {
            model.connect(probe.getText().strip(), port.getText().strip(), words());
            close.run();
        });
        connect.disableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> probe.getText().isBlank() || port.getText().isBlank() || profile.getValue() == null,
                        probe.textProperty(),
                        port.textProperty(),
                        profile.valueProperty()));
        Flow actions = new Flow(
                Buttons.plain(Texts.say("Find out its lines"), find),
                Buttons.secondary(Texts.say("Back"), close),
                connect);
        actions.getStyleClass().add("page-actions");
        getStyleClass().add("card");
        getChildren()
                .addAll(
                        Words.cardTitle(Texts.say("Connect a probe")),
                        grid,
                        Words.wrapped(Words.caption(
                                Texts.say("Mains heat beside water: let a residual-current device guard it."))),
                        actions);
    }

    /** The form of its lines with its settings, as one is chosen. */
    private String words() {
        return (profile.getValue() + " " + settings.getText().strip()).strip();
    }

    /** Puts in what was found out about a port: the form of its lines, with settings if any. */
    void fill(String foundPort, String form) {
        String[] parts = form.split(" ", 2);
        port.setText(foundPort);
        profile.setValue(parts[0]);
        settings.setText(parts.length == 2 ? parts[1] : "");
    }

    void takeFocus() {
        probe.requestFocus();
    }

    private static TextField field(String name, String example) {
        TextField field = new TextField();
        field.setAccessibleText(name);
        field.setPromptText(example);
        field.setPrefColumnCount(16);
        return field;
    }
}

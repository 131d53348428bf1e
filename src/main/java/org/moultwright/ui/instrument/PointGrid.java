package org.moultwright.ui.instrument;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import javafx.application.Platform;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.util.StringConverter;
import org.moultwright.compute.calibration.SaturatedSalt;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Words;

/** The reference points, one a row: what is known, what the probe shows, and how sure each is. */
final class PointGrid extends GridPane {
    private final CalibrationViewModel model;
    private final List<MeasuredField> shown = new ArrayList<>();

    PointGrid(CalibrationViewModel model) {
        this.model = model;
        getStyleClass().addAll("form", "point-grid");
        model.form().points().addListener((ListChangeListener<PointEntry>) change -> {
            boolean isOtherRows = false;
            while (change.next()) {
                isOtherRows |= change.wasAdded() || change.wasRemoved();
            }
            if (isOtherRows) {
                lay();
            }
        });
        lay();
    }

    void takeFocus() {
        if (!shown.isEmpty()) {
            shown.get(0).input().requestFocus();
        }
    }

    /** A row just added is laid out first. */
    void takeFocusAtLast() {
        Platform.runLater(() -> {
            if (!shown.isEmpty()) {
                shown.get(shown.size() - 1).input().requestFocus();
            }
        });
    }

    private void lay() {
        getChildren().clear();
        shown.clear();
        addRow(
                0,
                Words.whole(Words.caption(Texts.say("true value"))),
                Words.caption(Degrees.symbol()),
                Words.whole(Words.caption("±")),
                Words.whole(Words.caption(Texts.say("probe shows"))),
                Words.whole(Words.caption("±")));
        int row = 1;
        for (PointEntry point : model.form().points()) {
            lay(row++, point);
        }
    }

    private void lay(int row, PointEntry point) {
        MeasuredField indicated = new MeasuredField(point.indicated());
        shown.add(indicated);
        String last = model.lastReading();
        Button take = Buttons.plain(Texts.say("Take its last"), () -> model.takeReading(point));
        take.setAccessibleText(Texts.say("take what the probe said last, {0}", last));
        take.setTooltip(new Tooltip(last));
        take.setVisible(!last.isEmpty());
        take.setManaged(!last.isEmpty());
        Button remove = Buttons.plain(Texts.say("Remove"), () -> model.form().remove(point));
        remove.setAccessibleText(Texts.say("remove point {0}", row));
        switch (point.kind()) {
            case ICE ->
                addRow(
                        row,
                        Words.whole(Words.plain(Texts.say("melting ice"))),
                        Words.whole(Words.plain(Degrees.words(0, 1))),
                        Words.whole(Words.muted(Scale.APART.words(0.05))));
            case THERMOMETER ->
                addRow(
                        row,
                        Words.whole(Words.plain(Texts.say("thermometer, {0}", Degrees.symbol()))),
                        new MeasuredField(point.known()),
                        new MeasuredField(point.knownSd()));
            case SALT -> addRow(row, salts(point), new MeasuredField(point.known()), percent(point));
        }
        add(indicated, 3, row);
        add(new MeasuredField(point.indicatedSd()), 4, row);
        add(take, 5, row);
        add(remove, 6, row);
    }

    private static Node salts(PointEntry point) {
        ChoiceBox<SaturatedSalt> salts = new ChoiceBox<>();
        salts.getItems().setAll(SaturatedSalt.values());
        salts.setConverter(new SaltNames());
        salts.setAccessibleText(Texts.say("salt"));
        salts.setMinWidth(USE_PREF_SIZE);
        salts.valueProperty().bindBidirectional(point.saltProperty());
        return salts;
    }

    /** What the table says for this salt at the jar's temperature. */
    private static Label percent(PointEntry point) {
        Label label = Words.whole(Words.muted(""));
        Runnable say = () -> {
            OptionalDouble percent = point.saltPercent();
            label.setText(percent.isPresent() ? "= " + Numbers.fixed(percent.getAsDouble(), 1) + " %" : "");
        };
        Arrays.stream(point.observables()).forEach(each -> each.addListener(observed -> say.run()));
        say.run();
        return label;
    }

    /** Salts as they are sold. */
    private static final class SaltNames extends StringConverter<SaturatedSalt> {
        @Override
        public String toString(SaturatedSalt salt) {
            return switch (salt) {
                case LITHIUM_CHLORIDE -> Texts.say("lithium chloride");
                case MAGNESIUM_CHLORIDE -> Texts.say("magnesium chloride");
                case POTASSIUM_CARBONATE -> Texts.say("potassium carbonate");
                case SODIUM_CHLORIDE -> Texts.say("kitchen salt");
                case POTASSIUM_CHLORIDE -> Texts.say("potassium chloride");
                case POTASSIUM_SULPHATE -> Texts.say("potassium sulphate");
            };
        }

        @Override
        public SaturatedSalt fromString(String name) {
            return Arrays.stream(SaturatedSalt.values())
                    .filter(salt -> toString(salt).equals(name))
                    .findFirst()
                    .orElse(SaturatedSalt.SODIUM_CHLORIDE);
        }
    }
}

package org.moultwright.ui.control;

import java.util.Optional;
import javafx.beans.property.StringProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.javafx.FontIcon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignA;

/**
 * A sentence and, more quietly, what to do about it, on a soft ground: the balance of a sheet, a notice,
 * a fault. It takes no room while it has nothing to say.
 */
public final class Banner extends Flow {
    private static final Ikon SIGN = MaterialDesignA.ALERT_CIRCLE_OUTLINE;

    private final Label sentence = Words.wrapped(Words.strong(""));
    private final Label detail = Words.wrapped(Words.styled("", "detail"));
    /** Made when there is urgency to sign: a screen has many banners, and hardly any ever has. */
    private Optional<FontIcon> icon = Optional.empty();

    private final VBox words = new VBox();
    private final Flow actions = new Flow();

    public Banner(Tone tone) {
        words.getChildren().addAll(sentence, detail);
        setHgrow(words, Priority.ALWAYS);
        actions.getStyleClass().add("banner-actions");
        hideWhileEmpty(detail);
        managedProperty().bind(sentence.textProperty().isNotEmpty());
        visibleProperty().bind(managedProperty());
        setAccessibleRole(AccessibleRole.TEXT);
        accessibleTextProperty().bind(sentence.textProperty().concat(" ").concat(detail.textProperty()));
        getStyleClass().add("banner");
        getChildren().add(words);
        setTone(tone);
    }

    public void setTone(Tone tone) {
        getStyleClass().setAll("banner", tone.styleClass());
        boolean urgent = tone == Tone.WARN || tone == Tone.BAD;
        if (urgent && icon.isEmpty()) {
            icon = Optional.of(FontIcon.of(SIGN, 22));
            getChildren().add(0, icon.get());
        }
        icon.ifPresent(sign -> {
            sign.setManaged(urgent);
            sign.setVisible(urgent);
        });
    }

    public StringProperty sentenceProperty() {
        return sentence.textProperty();
    }

    public StringProperty detailProperty() {
        return detail.textProperty();
    }

    /** What the keeper can do about it, in the order offered: one at the right, several beneath the words. */
    public void setActions(Button... offered) {
        words.getChildren().remove(actions);
        getChildren().remove(actions);
        actions.getChildren().setAll(offered);
        if (offered.length == 1) {
            getChildren().add(actions);
        } else if (offered.length > 1) {
            words.getChildren().add(actions);
        }
    }

    private static void hideWhileEmpty(Label label) {
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        label.visibleProperty().bind(label.managedProperty());
    }
}

package org.moultwright.ui.control;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.javafx.FontIcon;

/**
 * A sentence and, more quietly, what to do about it, on a soft ground: the balance of a sheet, a notice,
 * a fault. It takes no room while it has nothing to say, and has no parts before it first has: a screen has many
 * banners, and hardly any ever says a word.
 */
public final class Banner extends Flow {
    /** It has something to say where it had not: whoever scrolls it brings it into sight. */
    static final EventType<Event> APPEARED = new EventType<>(Event.ANY, "BANNER_APPEARED");

    private final StringProperty sentence = new SimpleStringProperty("");
    private final StringProperty detail = new SimpleStringProperty("");
    private final VBox words = new VBox();
    private final Flow actions = new Flow();
    private List<Button> offered = List.of();
    private Optional<FontIcon> sign = Optional.empty();
    private boolean isUrgent;
    private boolean hasParts;

    public Banner(Tone tone) {
        managedProperty().bind(sentence.isNotEmpty());
        visibleProperty().bind(managedProperty());
        sentence.addListener((observed, before, now) -> {
            say(now);
            if (before.isEmpty()) {
                fireEvent(new Event(APPEARED));
            }
        });
        setAccessibleRole(AccessibleRole.TEXT);
        setTone(tone);
    }

    public void setTone(Tone tone) {
        getStyleClass().setAll("banner", tone.styleClass());
        isUrgent = tone == Tone.WARN || tone == Tone.BAD;
        showSign();
    }

    public StringProperty sentenceProperty() {
        return sentence;
    }

    public StringProperty detailProperty() {
        return detail;
    }

    /** What the keeper can do about it, in the order offered: one at the right, several beneath the words. */
    public void setActions(Button... offered) {
        this.offered = List.of(offered);
        showActions();
    }

    private void say(String now) {
        if (hasParts || now.isEmpty()) {
            return;
        }
        hasParts = true;
        accessibleTextProperty().bind(sentence.concat(" ").concat(detail));
        Label quieter = Words.wrapped(Words.styled("", "detail"));
        quieter.textProperty().bind(detail);
        quieter.managedProperty().bind(detail.isNotEmpty());
        quieter.visibleProperty().bind(quieter.managedProperty());
        Label said = Words.wrapped(Words.strong(""));
        said.textProperty().bind(sentence);
        words.getChildren().addAll(said, quieter);
        setHgrow(words, Priority.ALWAYS);
        getChildren().add(words);
        actions.getStyleClass().add("banner-actions");
        showSign();
        showActions();
    }

    private void showSign() {
        if (hasParts && isUrgent && sign.isEmpty()) {
            sign = Optional.of(FontIcon.of(Sign.ATTENTION, 22));
            getChildren().add(0, sign.get());
        }
        sign.ifPresent(made -> {
            made.setManaged(isUrgent);
            made.setVisible(isUrgent);
        });
    }

    private void showActions() {
        if (!hasParts) {
            return;
        }
        words.getChildren().remove(actions);
        getChildren().remove(actions);
        actions.getChildren().setAll(offered);
        if (offered.size() == 1) {
            getChildren().add(actions);
        } else if (offered.size() > 1) {
            words.getChildren().add(actions);
        }
    }
}

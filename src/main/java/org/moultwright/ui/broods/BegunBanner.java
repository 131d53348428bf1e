package org.moultwright.ui.broods;

import javafx.collections.ListChangeListener;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Tone;
import org.moultwright.workflow.FormDraft;

/** The forms begun and not saved, each with the way back to it. It takes no room while there are none. */
final class BegunBanner extends VBox {
    private final SacForms forms;

    BegunBanner(SacForms forms) {
        this.forms = forms;
        getStyleClass().add("lines");
        managedProperty().bind(visibleProperty());
        forms.begun().begun().addListener((ListChangeListener<FormDraft>) change -> show());
        show();
    }

    private void show() {
        setVisible(!forms.begun().begun().isEmpty());
        getChildren().setAll(forms.begun().begun().stream().map(this::banner).toList());
    }

    private Banner banner(FormDraft draft) {
        Banner banner = new Banner(Tone.ACCENT);
        banner.sentenceProperty().set(words(draft));
        banner.setActions(Buttons.secondary(Texts.say("Go on"), () -> forms.goOn(draft)));
        return banner;
    }

    private static String words(FormDraft draft) {
        return switch (draft.form()) {
            case OpeningForm.FORM -> Texts.say("The opening of {0} is begun and not saved.", draft.about());
            case PullForm.FORM -> Texts.say("{0} taken from its mother: begun and not saved.", draft.about());
            default -> Texts.say("A new sac is begun and not saved.");
        };
    }
}

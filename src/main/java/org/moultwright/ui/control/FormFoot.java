package org.moultwright.ui.control;

import javafx.scene.control.Button;

/** What can be done with what was filled in, beneath the fields: Tab leads here from the last of them, as eyes do. */
public final class FormFoot extends Flow {
    public FormFoot(Button... actions) {
        super(actions);
        getStyleClass().add("page-actions");
    }
}

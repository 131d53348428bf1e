package org.moultwright.ui.plan;

import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.moultwright.settings.PlanSettings;

/** Plans kept nowhere but in memory. */
public final class ChosenPlans {
    private ChosenPlans() {}

    public static PlanChoices usual() {
        ObjectProperty<PlanSettings> settings = new SimpleObjectProperty<>(PlanSettings.DEFAULT);
        return new PlanChoices(settings, settings::set);
    }
}

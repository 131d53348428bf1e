package org.moultwright.ui.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.jspecify.annotations.Nullable;
import org.moultwright.compute.plan.Safety;
import org.moultwright.settings.PlanSettings;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.OrderTerms;

/** The days away, how safe it shall be, and what is kept in the settings: the same wherever they stand. */
public final class PlanChoices {
    private final ObjectProperty<@Nullable LocalDate> awayFrom = new SimpleObjectProperty<>();
    private final ObjectProperty<@Nullable LocalDate> awayTo = new SimpleObjectProperty<>();
    private final ObjectProperty<Safety> safety = new SimpleObjectProperty<>(Safety.NINETY);
    private final ObservableValue<PlanSettings> settings;
    private final Consumer<PlanSettings> keep;

    /**
     * Choices of which the settings are kept elsewhere.
     *
     * @param settings as they are now
     * @param keep is told of a change; {@code settings} shows it then
     */
    public PlanChoices(ObservableValue<PlanSettings> settings, Consumer<PlanSettings> keep) {
        this.settings = settings;
        this.keep = keep;
    }

    /** The first day away; null while none is planned. */
    public ObjectProperty<@Nullable LocalDate> awayFromProperty() {
        return awayFrom;
    }

    /** The last day away. */
    public ObjectProperty<@Nullable LocalDate> awayToProperty() {
        return awayTo;
    }

    public ObjectProperty<Safety> safetyProperty() {
        return safety;
    }

    public ObservableValue<PlanSettings> settingsProperty() {
        return settings;
    }

    public PlanSettings settings() {
        return settings.getValue();
    }

    public void keep(PlanSettings changed) {
        keep.accept(changed);
    }

    /** On what terms something is ordered now. */
    public OrderTerms terms(DayWords days, Instant now) {
        return new OrderTerms(safety.get(), settings().potDays(), settings().foodDays(), days.zone(), days.date(now));
    }
}

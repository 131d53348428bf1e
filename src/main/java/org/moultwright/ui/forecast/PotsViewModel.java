package org.moultwright.ui.forecast;

import java.time.LocalDate;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.plan.Safety;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Listing;

/** How many pots to have by which day. */
final class PotsViewModel {
    private static final int WEEK_DAYS = 7;

    private final DayWords days;
    private final ObjectProperty<Safety> safety = new SimpleObjectProperty<>(Safety.NINETY);
    private final ReadOnlyStringWrapper sentence = new ReadOnlyStringWrapper("");
    private final ObservableList<PotNeeds.Need> needs = FXCollections.observableArrayList();
    private List<Foreseen> trays = List.of();
    private LocalDate today = LocalDate.EPOCH;

    PotsViewModel(DayWords days) {
        this.days = days;
        safety.addListener((observed, before, now) -> show());
    }

    ObjectProperty<Safety> safetyProperty() {
        return safety;
    }

    ReadOnlyStringProperty sentenceProperty() {
        return sentence.getReadOnlyProperty();
    }

    ObservableList<PotNeeds.Need> needs() {
        return needs;
    }

    /** "today", "by 4 May". */
    String by(PotNeeds.Need need) {
        return need.day().equals(today) ? Texts.say("today") : Texts.say("by {0}", shortDay(need.day()));
    }

    void read(List<Foreseen> foreseen, LocalDate now) {
        trays = foreseen;
        today = now;
        show();
    }

    private void show() {
        needs.setAll(PotNeeds.of(trays, safety.get(), days));
        List<String> unknown = trays.stream()
                .filter(tray -> tray.forecast().compositions().isEmpty())
                .map(Foreseen::code)
                .toList();
        sentence.set(
                unknown.isEmpty()
                        ? counted()
                        : counted() + " " + Texts.say("Of {0} it is too early to say.", Listing.and(unknown)));
    }

    private String counted() {
        if (needs.isEmpty()) {
            return Texts.say("No pots are needed as far as the forecast sees.");
        }
        PotNeeds.Need last = needs.get(needs.size() - 1);
        LocalDate weekAhead = today.plusDays(WEEK_DAYS);
        int withinAWeek = needs.stream()
                .filter(need -> !need.day().isAfter(weekAhead))
                .mapToInt(PotNeeds.Need::pots)
                .max()
                .orElse(0);
        String by = shortDay(last.day());
        return withinAWeek == last.pots() || withinAWeek == 0
                ? Texts.count(last.pots(), "{0} pot in all by {1}.", "{0} pots in all by {1}.", last.pots(), by)
                : Texts.count(
                        last.pots(),
                        "{0} pot in all by {1}, {2} of them within a week.",
                        "{0} pots in all by {1}, {2} of them within a week.",
                        last.pots(),
                        by,
                        withinAWeek);
    }

    private String shortDay(LocalDate day) {
        return days.shortDay(day.atStartOfDay(days.zone()).toInstant());
    }
}

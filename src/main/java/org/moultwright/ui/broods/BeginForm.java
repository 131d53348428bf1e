package org.moultwright.ui.broods;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.moultwright.domain.InstantRange;
import org.moultwright.language.Texts;
import org.moultwright.workflow.BeginBrood;
import org.moultwright.workflow.Deed;

/** A sac being written down that is not opened yet. */
final class BeginForm extends SacForm {
    /** The form as it is named among those begun. */
    static final String FORM = "sac";

    /** Where a sac is. */
    enum Where {
        WITH_MOTHER,
        TAKEN
    }

    private final FormField code = field("code", Texts.say("brood code"));
    private final FormField taxon = field("species", Texts.say("species, its scientific name"));
    private final FormField mother = field("mother", Texts.say("mother's code"));
    private final FormField laid = dayField("laid", Texts.say("laid, first day it may have been"));
    private final FormField laidTo = dayField("laid-to", Texts.say("laid, last day it may have been"));
    private final FormField whereText = field("where", "");
    private final FormField pulled = dayField("taken", Texts.say("day it was taken from the mother"));
    private final FormField inside = placeField("stands-in", Texts.say("container it stands in"));
    private final ObjectProperty<Where> where = new SimpleObjectProperty<>(Where.WITH_MOTHER);
    private final Consumer<String> opensNext;

    /** @param opensNext opens the sac of a code, once it is written down */
    BeginForm(SacFormDesk desk, Consumer<String> opensNext) {
        super(desk, FORM, "");
        this.opensNext = opensNext;
        where.addListener((observed, before, now) -> whereText.set(now == Where.TAKEN ? now.name() : ""));
        layBack();
        where.set(whereText.isEmpty() ? Where.WITH_MOTHER : Where.TAKEN);
    }

    FormField code() {
        return code;
    }

    @Override
    String brood() {
        return code.written();
    }

    FormField taxon() {
        return taxon;
    }

    FormField mother() {
        return mother;
    }

    FormField laid() {
        return laid;
    }

    /** The last day it may have been laid; empty where it is the first. */
    FormField laidTo() {
        return laidTo;
    }

    ObjectProperty<Where> whereProperty() {
        return where;
    }

    /** The day it was taken from the mother, where it was; empty for today. */
    FormField pulled() {
        return pulled;
    }

    FormField inside() {
        return inside;
    }

    /** The species of the broods there are, the latest first. */
    List<String> knownSpecies() {
        return desk().room().get().broods().stream()
                .map(brood -> brood.record().brood().taxon())
                .distinct()
                .toList();
    }

    /** The mothers there are. */
    List<String> knownMothers() {
        return desk().room().get().broods().stream()
                .flatMap(brood -> Mothers.of(brood.record()).stream())
                .distinct()
                .toList();
    }

    /** Keeps it, and goes on to open it. */
    void keepAndOpen() {
        String opened = code.written();
        keep(() -> opensNext.accept(opened));
    }

    @Override
    Optional<Supplier<Deed.Summary>> filledIn() {
        boolean isNamed = code.isEmpty()
                ? refuse(code, Texts.say("Give it a code, such as the species' initials, the year and a letter."))
                : refuse(code, BeginBrood.againstCode(desk().room().get(), code.written()));
        boolean isOfSpecies = !taxon.isEmpty()
                || refuse(
                        taxon, Texts.say("Which species? Its scientific name finds what earlier broods have taught."));
        Optional<LocalDate> first = day(laid);
        Optional<LocalDate> last = laidTo.isEmpty() ? first : day(laidTo);
        boolean isLaid = (laid.isEmpty() || first.isPresent()) && (laidTo.isEmpty() || last.isPresent());
        if (isLaid && laid.isEmpty() && !laidTo.isEmpty()) {
            isLaid = refuse(laid, Texts.say("And the first day it may have been?"));
        } else if (isLaid && first.isPresent() && last.get().isBefore(first.get())) {
            isLaid = refuse(laidTo, Texts.say("The last day is before the first."));
        }
        Optional<Instant> taken = isLaid ? taken(first) : Optional.empty();
        boolean isWhere = where.get() == Where.WITH_MOTHER || taken.isPresent();
        boolean isPlaced = isPlace(inside);
        if (!(isNamed && isOfSpecies && isLaid && isWhere && isPlaced)) {
            return Optional.empty();
        }
        BeginBrood.Sac sac = new BeginBrood.Sac(
                code.written(),
                taxon.written(),
                zone(),
                mother.written(),
                first.map(from -> range(from, last.orElse(from))),
                taken,
                place(inside));
        return Optional.of(() -> desk().waysIn().sacs().begin().begin(sac));
    }

    private Optional<Instant> taken(Optional<LocalDate> laidFirst) {
        if (where.get() == Where.WITH_MOTHER) {
            return Optional.empty();
        }
        Optional<LocalDate> day = pulled.isEmpty() ? Optional.of(today()) : day(pulled);
        if (day.isPresent()
                && laidFirst.filter(from -> day.get().isBefore(from)).isPresent()) {
            refuse(pulled, Texts.say("That is before the sac was laid."));
            return Optional.empty();
        }
        return day.map(this::instant);
    }

    /** From the first minute of the first day to the last of the last, but never ahead of now. */
    private InstantRange range(LocalDate from, LocalDate to) {
        Instant end = to.plusDays(1).atStartOfDay(zone()).toInstant();
        return new InstantRange(from.atStartOfDay(zone()).toInstant(), end.isAfter(now()) ? now() : end);
    }

    private ZoneId zone() {
        return desk().days().zone();
    }
}

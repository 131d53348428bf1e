package org.moultwright.ui.broods;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.moultwright.language.Texts;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.PullSac;

/** A sac being taken from its mother. */
final class PullForm extends SacForm {
    /** The form as it is named among those begun. */
    static final String FORM = "taken";

    private final FormField day = dayField("day", Texts.say("day it was taken"));
    private final FormField inside = placeField("into", Texts.say("container it was put into"));

    PullForm(SacFormDesk desk, String brood) {
        super(desk, FORM, brood);
        layBack();
    }

    /** Empty for today. */
    FormField day() {
        return day;
    }

    FormField inside() {
        return inside;
    }

    @Override
    Optional<Supplier<Deed.Summary>> filledIn() {
        Optional<LocalDate> read = day.isEmpty() ? Optional.of(today()) : day(day);
        boolean isPlaced = isPlace(inside);
        if (read.isEmpty() || !isPlaced) {
            return Optional.empty();
        }
        Instant at = instant(read.get());
        boolean isThen = desk().room()
                .get()
                .brood(about())
                .map(BroodView::record)
                .map(record -> refuse(day, PullSac.against(record, at, now())))
                .orElse(true);
        return isThen
                ? Optional.of(() -> desk().waysIn().sacs().pull().pull(about(), at, place(inside)))
                : Optional.empty();
    }
}

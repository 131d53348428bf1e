package org.moultwright.text;

import java.time.LocalDate;
import org.moultwright.compute.plan.OrderDates;
import org.moultwright.compute.plan.Safety;

/**
 * What to order by when, in sentences.
 *
 * @param days the keeper's days
 * @param safety how sure the keeper wants to be
 */
public record OrderWords(DayWords days, Safety safety) {

    /** "Order 59 pots and labels by 3 May: there on 6 May, before the first slings in 9 of 10 outcomes." */
    public String pots(int count, OrderDates dates, boolean hasBegun, String stages) {
        String what = count == 1 ? "1 pot and label" : count + " pots and labels";
        return hasBegun
                ? "Order %s today: the first %s are there already.".formatted(what, stages)
                : order(what, dates, "the first " + stages);
    }

    /** The same of food, wanted for the first meal. */
    public String food(int count, OrderDates dates) {
        return order(count == 1 ? "food for 1" : "food for " + count, dates, "the first meal");
    }

    /** "by 3 May", "today". */
    public String by(OrderDates dates) {
        return dates.isLate() ? "today" : "by " + day(dates.orderBy());
    }

    private String order(String what, OrderDates dates, String before) {
        String there = "Order %s %s: there on %s, ".formatted(what, by(dates), day(dates.thereBy()));
        return dates.isLate()
                ? "%sin time for %s with a chance of %s.".formatted(there, before, ChanceWords.percent(dates.inTime()))
                : "%sbefore %s in %s outcomes.".formatted(there, before, safety.outcomes());
    }

    private String day(LocalDate date) {
        return days.day(date.atStartOfDay(days.zone()).toInstant());
    }
}

package org.moultwright.text;

import java.time.LocalDate;
import org.moultwright.compute.plan.OrderDates;
import org.moultwright.compute.plan.Safety;
import org.moultwright.language.Texts;

/**
 * What to order by when, in sentences.
 *
 * @param days the keeper's days
 * @param safety how sure the keeper wants to be
 */
public record OrderWords(DayWords days, Safety safety) {

    /** "Order 59 pots and labels by 3 May: there on 6 May, before the first slings in 9 of 10 outcomes." */
    public String pots(int count, OrderDates dates, boolean hasBegun, String stages) {
        String what = Texts.count(count, "1 pot and label", "{0} pots and labels", count);
        return hasBegun
                ? Texts.say("Order {0} today: the first {1} are there already.", what, stages)
                : order(what, dates, Texts.say("the first {0}", stages));
    }

    /** The same of food, wanted for the first meal. */
    public String food(int count, OrderDates dates) {
        return order(Texts.count(count, "food for 1", "food for {0}", count), dates, Texts.say("the first meal"));
    }

    /** "by 3 May", "today". */
    public String by(OrderDates dates) {
        return dates.isLate() ? Texts.say("today") : Texts.say("by {0}", day(dates.orderBy()));
    }

    private String order(String what, OrderDates dates, String before) {
        String there = day(dates.thereBy());
        return dates.isLate()
                ? Texts.say(
                        "Order {0} today: there on {1}, in time for {2} with a chance of {3}.",
                        what, there, before, ChanceWords.percent(dates.inTime()))
                : Texts.say(
                        "Order {0} by {1}: there on {2}, before {3} in {4} outcomes.",
                        what, day(dates.orderBy()), there, before, safety.outcomes());
    }

    private String day(LocalDate date) {
        return days.day(date.atStartOfDay(days.zone()).toInstant());
    }
}

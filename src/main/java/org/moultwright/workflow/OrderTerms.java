package org.moultwright.workflow;

import java.time.LocalDate;
import java.time.ZoneId;
import org.moultwright.compute.plan.Safety;

/**
 * On what terms a keeper orders.
 *
 * @param safety how sure all shall be there in time, and enough of it
 * @param potDays days from ordering pots and labels to the day they come
 * @param foodDays the same for food
 * @param zone where the keeper's days begin
 * @param today the first day on which something can be ordered
 */
public record OrderTerms(Safety safety, int potDays, int foodDays, ZoneId zone, LocalDate today) {}

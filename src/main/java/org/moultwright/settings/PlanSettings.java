package org.moultwright.settings;

import org.moultwright.domain.Require;
import org.moultwright.domain.label.Paper;

/**
 * What a keeper plans with.
 *
 * @param potDays days from ordering pots and labels to the day they come
 * @param foodDays days from ordering food to the day it comes
 * @param phone the number a sitter calls; empty where the keeper writes it on the sheet
 * @param paper what a sitter's sheet is printed on
 */
public record PlanSettings(int potDays, int foodDays, String phone, Paper paper) {
    /** Nothing is ordered that takes longer. */
    public static final int MOST_DAYS = 365;

    /** Usual times of delivery; assumptions, for the keeper to change. */
    public static final PlanSettings DEFAULT = new PlanSettings(5, 3, "", Paper.A4);

    public PlanSettings {
        Require.within("potDays", potDays, 0, MOST_DAYS);
        Require.within("foodDays", foodDays, 0, MOST_DAYS);
    }

    public PlanSettings withPotDays(int days) {
        return new PlanSettings(days, foodDays, phone, paper);
    }

    public PlanSettings withFoodDays(int days) {
        return new PlanSettings(potDays, days, phone, paper);
    }

    public PlanSettings withPhone(String other) {
        return new PlanSettings(potDays, foodDays, other, paper);
    }

    public PlanSettings withPaper(Paper other) {
        return new PlanSettings(potDays, foodDays, phone, other);
    }
}

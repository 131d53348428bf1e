package org.moultwright.settings;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.label.Paper;

/** What a keeper plans with, as values of settings. */
final class PlanSettingsText {
    private static final String POT_DAYS = "delivery-days-pots";
    private static final String FOOD_DAYS = "delivery-days-food";
    private static final String PHONE = "sitter-phone";
    private static final String PAPER = "sitter-paper";

    private PlanSettingsText() {}

    static Map<String, String> print(PlanSettings plans) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put(POT_DAYS, Integer.toString(plans.potDays()));
        values.put(FOOD_DAYS, Integer.toString(plans.foodDays()));
        values.put(PHONE, plans.phone());
        values.put(PAPER, plans.paper().key());
        return values;
    }

    /**
     * Plans with one value read; empty where it is none of theirs.
     *
     * @throws IllegalArgumentException if it is one of theirs and not understood
     */
    static Optional<PlanSettings> with(PlanSettings plans, String name, String value) {
        return switch (name) {
            case POT_DAYS -> Optional.of(plans.withPotDays(Integer.parseInt(value)));
            case FOOD_DAYS -> Optional.of(plans.withFoodDays(Integer.parseInt(value)));
            case PHONE -> Optional.of(plans.withPhone(value));
            case PAPER ->
                Arrays.stream(Paper.values())
                        .filter(paper -> paper.key().equals(value))
                        .findFirst()
                        .map(plans::withPaper);
            default -> Optional.empty();
        };
    }
}

package org.moultwright.text;

import java.util.Comparator;
import java.util.List;
import org.moultwright.domain.Require;

/** Probabilities in words a keeper plans with, and in whole percent. */
public final class ChanceWords {
    private static final double CERTAIN = 0.985;
    private static final List<Step> STEPS = List.of(
            new Step(1 / 20.0, "one in twenty"),
            new Step(1 / 10.0, "one in ten"),
            new Step(1 / 5.0, "one in five"),
            new Step(1 / 4.0, "one in four"),
            new Step(1 / 3.0, "one in three"),
            new Step(2 / 5.0, "two in five"),
            new Step(1 / 2.0, "one in two"),
            new Step(3 / 5.0, "three in five"),
            new Step(2 / 3.0, "two in three"),
            new Step(3 / 4.0, "three in four"),
            new Step(4 / 5.0, "four in five"),
            new Step(9 / 10.0, "nine in ten"),
            new Step(19 / 20.0, "nineteen in twenty"));

    private ChanceWords() {}

    /** "two in three", the nearest of a few; "almost certain" and "hardly any chance" at the ends. */
    public static String of(double chance) {
        Require.within("chance", chance, 0, 1);
        if (chance >= CERTAIN) {
            return "almost certain";
        }
        if (chance <= 1 - CERTAIN) {
            return "hardly any chance";
        }
        return STEPS.stream()
                .min(Comparator.comparingDouble(step -> Math.abs(step.chance() - chance)))
                .map(Step::words)
                .orElseThrow();
    }

    /** "67 %"; what is neither impossible nor certain never reads 0 % or 100 %. */
    public static String percent(double chance) {
        Require.within("chance", chance, 0, 1);
        if (chance > 0 && chance < 0.01) {
            return "under 1 %";
        }
        if (chance > 0.99 && chance < 1) {
            return "over 99 %";
        }
        return Math.round(100 * chance) + " %";
    }

    private record Step(double chance, String words) {}
}

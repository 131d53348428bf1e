package org.moultwright.text;

import java.util.Comparator;
import java.util.List;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** Probabilities in words a keeper plans with, and in whole percent. */
public final class ChanceWords {
    private static final double CERTAIN = 0.985;
    private static final List<Step> STEPS = List.of(
            new Step(1 / 20.0, Texts.say("one in twenty")),
            new Step(1 / 10.0, Texts.say("one in ten")),
            new Step(1 / 5.0, Texts.say("one in five")),
            new Step(1 / 4.0, Texts.say("one in four")),
            new Step(1 / 3.0, Texts.say("one in three")),
            new Step(2 / 5.0, Texts.say("two in five")),
            new Step(1 / 2.0, Texts.say("one in two")),
            new Step(3 / 5.0, Texts.say("three in five")),
            new Step(2 / 3.0, Texts.say("two in three")),
            new Step(3 / 4.0, Texts.say("three in four")),
            new Step(4 / 5.0, Texts.say("four in five")),
            new Step(9 / 10.0, Texts.say("nine in ten")),
            new Step(19 / 20.0, Texts.say("nineteen in twenty")));

    private ChanceWords() {}

    /** "two in three", the nearest of a few; "almost certain" and "hardly any chance" at the ends. */
    public static String of(double chance) {
        Require.within("chance", chance, 0, 1);
        if (chance >= CERTAIN) {
            return Texts.say("almost certain");
        }
        if (chance <= 1 - CERTAIN) {
            return Texts.say("hardly any chance");
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
            return Texts.say("under 1 %");
        }
        if (chance > 0.99 && chance < 1) {
            return Texts.say("over 99 %");
        }
        return Math.round(100 * chance) + " %";
    }

    private record Step(double chance, String words) {}
}

package org.moultwright.settings;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;

/**
 * What a keeper has chosen. Immutable.
 *
 * @param theme light or dark
 * @param textSize how large text is
 * @param vocabulary the key of the way stages are named
 * @param labels the keeper's own names for stages, where they differ from that vocabulary
 * @param alarms how the keeper wants to be woken
 * @param plans what the keeper plans with
 */
public record Settings(
        Theme theme,
        TextSize textSize,
        String vocabulary,
        Map<Stage, String> labels,
        AlarmSettings alarms,
        PlanSettings plans) {
    public static final Settings DEFAULT = new Settings(
            Theme.LIGHT, TextSize.NORMAL, "english-hobby", Map.of(), AlarmSettings.DEFAULT, PlanSettings.DEFAULT);

    public Settings {
        Require.text("vocabulary", vocabulary);
        EnumMap<Stage, String> own = new EnumMap<>(Stage.class);
        labels.forEach((stage, label) -> own.put(stage, Require.text(stage.key(), label)));
        labels = Collections.unmodifiableMap(own);
    }

    public Settings withTheme(Theme other) {
        return new Settings(other, textSize, vocabulary, labels, alarms, plans);
    }

    public Settings withTextSize(TextSize other) {
        return new Settings(theme, other, vocabulary, labels, alarms, plans);
    }

    /** Another way of naming, and with it no names of the keeper's own. */
    public Settings withVocabulary(String other) {
        return new Settings(theme, textSize, other, Map.of(), alarms, plans);
    }

    public Settings withLabels(Map<Stage, String> others) {
        return new Settings(theme, textSize, vocabulary, others, alarms, plans);
    }

    public Settings withAlarms(AlarmSettings others) {
        return new Settings(theme, textSize, vocabulary, labels, others, plans);
    }

    public Settings withPlans(PlanSettings others) {
        return new Settings(theme, textSize, vocabulary, labels, alarms, others);
    }
}

package org.moultwright.settings;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import org.moultwright.domain.ColdestWall;
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
 * @param walls how cold the coldest wall of a container is, by container, where the keeper said so
 * @param plans what the keeper plans with
 * @param place language, numbers, dates and temperatures
 * @param desk how the keeper works at the desk
 */
public record Settings(
        Theme theme,
        TextSize textSize,
        String vocabulary,
        Map<Stage, String> labels,
        AlarmSettings alarms,
        Map<String, ColdestWall> walls,
        PlanSettings plans,
        PlaceSettings place,
        DeskSettings desk) {
    public static final Settings DEFAULT = new Settings(
            Theme.LIGHT,
            TextSize.NORMAL,
            "english-hobby",
            Map.of(),
            AlarmSettings.DEFAULT,
            Map.of(),
            PlanSettings.DEFAULT,
            PlaceSettings.DEFAULT,
            DeskSettings.DEFAULT);

    public Settings {
        Require.text("vocabulary", vocabulary);
        EnumMap<Stage, String> own = new EnumMap<>(Stage.class);
        labels.forEach((stage, label) -> own.put(stage, Require.text(stage.key(), label)));
        labels = Collections.unmodifiableMap(own);
        walls = Collections.unmodifiableMap(new TreeMap<>(walls));
    }

    /** The walls water on which is warned of. */
    public Map<String, ColdestWall> watchedWalls() {
        return alarms.isWallWatched() ? walls : Map.of();
    }

    public Settings withTheme(Theme other) {
        return new Settings(other, textSize, vocabulary, labels, alarms, walls, plans, place, desk);
    }

    public Settings withTextSize(TextSize other) {
        return new Settings(theme, other, vocabulary, labels, alarms, walls, plans, place, desk);
    }

    /** Another way of naming, and with it no names of the keeper's own. */
    public Settings withVocabulary(String other) {
        return new Settings(theme, textSize, other, Map.of(), alarms, walls, plans, place, desk);
    }

    public Settings withLabels(Map<Stage, String> others) {
        return new Settings(theme, textSize, vocabulary, others, alarms, walls, plans, place, desk);
    }

    public Settings withWalls(Map<String, ColdestWall> others) {
        return new Settings(theme, textSize, vocabulary, labels, alarms, others, plans, place, desk);
    }

    public Settings withAlarms(AlarmSettings others) {
        return new Settings(theme, textSize, vocabulary, labels, others, walls, plans, place, desk);
    }

    public Settings withPlans(PlanSettings others) {
        return new Settings(theme, textSize, vocabulary, labels, alarms, walls, others, place, desk);
    }

    public Settings withPlace(PlaceSettings other) {
        return new Settings(theme, textSize, vocabulary, labels, alarms, walls, plans, other, desk);
    }

    public Settings withDesk(DeskSettings other) {
        return new Settings(theme, textSize, vocabulary, labels, alarms, walls, plans, place, other);
    }
}

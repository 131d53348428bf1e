package org.moultwright.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.Stage;

/** Settings as lines of {@code name = value}, to be read and mended by hand. */
final class SettingsText {
    private static final String LABEL_PREFIX = "label.";
    private static final String WALL_PREFIX = "wall.";

    private SettingsText() {}

    static List<String> print(Settings settings) {
        AlarmSettings alarms = settings.alarms();
        List<String> lines = new ArrayList<>(List.of(
                line("theme", word(settings.theme())),
                line("text-size", word(settings.textSize())),
                line("vocabulary", settings.vocabulary()),
                line(AlarmSettingsText.LIMITS, AlarmSettingsText.limits(alarms.limits())),
                line(AlarmSettingsText.WALL, AlarmSettingsText.onOrOff(alarms.isWallWatched())),
                line(AlarmSettingsText.SOUND, AlarmSettingsText.onOrOff(alarms.isHeard())),
                line(AlarmSettingsText.NOTICE, AlarmSettingsText.onOrOff(alarms.isNoticed())),
                line(AlarmSettingsText.COMMAND, alarms.command())));
        PlanSettingsText.print(settings.plans()).forEach((name, value) -> lines.add(line(name, value)));
        PlaceSettingsText.print(settings.place()).forEach((name, value) -> lines.add(line(name, value)));
        DeskSettingsText.print(settings.desk()).forEach((name, value) -> lines.add(line(name, value)));
        settings.labels().forEach((stage, label) -> lines.add(line(LABEL_PREFIX + stage.key(), label)));
        settings.walls().forEach((container, wall) -> lines.add(line(WALL_PREFIX + container, WallText.of(wall))));
        return lines;
    }

    /**
     * Reads settings; what is not said stays at its default.
     *
     * @throws IllegalArgumentException if a line is not understood, naming it
     */
    static Settings parse(List<String> lines) {
        Settings settings = Settings.DEFAULT;
        Map<Stage, String> labels = new EnumMap<>(Stage.class);
        Map<String, ColdestWall> walls = new TreeMap<>();
        for (String line : lines) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            int equals = line.indexOf('=');
            if (equals < 0) {
                throw notUnderstood(line);
            }
            String name = line.substring(0, equals).strip();
            String value = line.substring(equals + 1).strip();
            if (name.startsWith(LABEL_PREFIX)) {
                labels.put(stage(name.substring(LABEL_PREFIX.length()), line), value);
            } else if (name.startsWith(WALL_PREFIX)) {
                walls.put(name.substring(WALL_PREFIX.length()), WallText.of(value));
            } else {
                settings = with(settings, name, value, line);
            }
        }
        return settings.withLabels(labels).withWalls(walls);
    }

    private static Settings with(Settings settings, String name, String value, String line) {
        return switch (name) {
            case "theme" -> settings.withTheme(constant(Theme.values(), value, line));
            case "text-size" -> settings.withTextSize(constant(TextSize.values(), value, line));
            case "vocabulary" -> settings.withVocabulary(value);
            case AlarmSettingsText.LIMITS ->
                settings.withAlarms(settings.alarms().withLimits(AlarmSettingsText.limits(value)));
            case AlarmSettingsText.WALL ->
                settings.withAlarms(settings.alarms().wallWatched(AlarmSettingsText.onOrOff(name, value)));
            case AlarmSettingsText.SOUND ->
                settings.withAlarms(settings.alarms().heard(AlarmSettingsText.onOrOff(name, value)));
            case AlarmSettingsText.NOTICE ->
                settings.withAlarms(settings.alarms().noticed(AlarmSettingsText.onOrOff(name, value)));
            case AlarmSettingsText.COMMAND ->
                settings.withAlarms(settings.alarms().withCommand(value));
            default ->
                DeskSettingsText.with(settings.desk(), name, value)
                        .map(settings::withDesk)
                        .or(() -> PlaceSettingsText.with(settings.place(), name, value)
                                .map(settings::withPlace))
                        .or(() -> PlanSettingsText.with(settings.plans(), name, value)
                                .map(settings::withPlans))
                        .orElseThrow(() -> notUnderstood(line));
        };
    }

    private static Stage stage(String key, String line) {
        return Stage.fromKey(key).orElseThrow(() -> notUnderstood(line));
    }

    private static <E extends Enum<E>> E constant(E[] all, String value, String line) {
        return Arrays.stream(all)
                .filter(constant -> word(constant).equals(value))
                .findFirst()
                .orElseThrow(() -> notUnderstood(line));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static String line(String name, String value) {
        return name + " = " + value;
    }

    private static IllegalArgumentException notUnderstood(String line) {
        return new IllegalArgumentException("settings hold '" + line + "' but must hold lines of name = value");
    }
}

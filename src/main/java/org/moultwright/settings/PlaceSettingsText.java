package org.moultwright.settings;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.moultwright.language.TemperatureUnit;

/** Language and forms, as values of settings. */
final class PlaceSettingsText {
    private static final String LANGUAGE = "language";
    private static final String FORMS = "numbers-and-dates";
    private static final String TEMPERATURE = "temperature";
    private static final String USUAL = "usual";

    private PlaceSettingsText() {}

    static Map<String, String> print(PlaceSettings place) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put(LANGUAGE, place.language());
        values.put(FORMS, place.forms());
        values.put(TEMPERATURE, place.temperature().map(PlaceSettingsText::word).orElse(USUAL));
        return values;
    }

    /** A place with one value read; empty where it is none of its values, or not understood. */
    static Optional<PlaceSettings> with(PlaceSettings place, String name, String value) {
        return switch (name) {
            case LANGUAGE -> Optional.of(place.withLanguage(value));
            case FORMS -> Optional.of(place.withForms(value));
            case TEMPERATURE ->
                value.equals(USUAL)
                        ? Optional.of(place.withTemperature(Optional.empty()))
                        : Arrays.stream(TemperatureUnit.values())
                                .filter(unit -> word(unit).equals(value))
                                .findFirst()
                                .map(unit -> place.withTemperature(Optional.of(unit)));
            default -> Optional.empty();
        };
    }

    private static String word(TemperatureUnit unit) {
        return unit.name().toLowerCase(Locale.ROOT);
    }
}

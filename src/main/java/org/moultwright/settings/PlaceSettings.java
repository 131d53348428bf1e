package org.moultwright.settings;

import java.util.Locale;
import java.util.Optional;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.TemperatureUnit;

/**
 * The language of the desk and how numbers, dates and temperatures are written where it stands.
 *
 * @param language the tag of a language, such as "de"; empty for that of the machine where there is a translation
 * @param forms the tag of a place, such as "en-US", for numbers and dates; empty for that of the machine
 * @param temperature what temperatures are shown in; empty for what is usual where {@code forms} are
 */
public record PlaceSettings(String language, String forms, Optional<TemperatureUnit> temperature) {
    public static final PlaceSettings DEFAULT = new PlaceSettings("", "", Optional.empty());

    public PlaceSettings withLanguage(String tag) {
        return new PlaceSettings(tag, forms, temperature);
    }

    public PlaceSettings withForms(String tag) {
        return new PlaceSettings(language, tag, temperature);
    }

    public PlaceSettings withTemperature(Optional<TemperatureUnit> unit) {
        return new PlaceSettings(language, forms, unit);
    }

    /** The language wanted, on a machine of this locale. */
    public Locale languageOn(Locale machine) {
        return language.isEmpty() ? machine : Locale.forLanguageTag(language);
    }

    /** Whose numbers and dates, on a machine of this locale. */
    public Locale formsOn(Locale machine) {
        return forms.isEmpty() ? machine : Locale.forLanguageTag(forms);
    }

    /** The paper of whatever is put on plain paper, on a machine of this locale. */
    public Paper paperOn(Locale machine) {
        return Paper.usual(formsOn(machine));
    }

    public TemperatureUnit temperatureOn(Locale machine) {
        return temperature.orElseGet(() -> TemperatureUnit.usual(formsOn(machine)));
    }
}

package org.moultwright.boot;

import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import org.moultwright.language.Dates;
import org.moultwright.language.Degrees;
import org.moultwright.language.Language;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
import org.moultwright.settings.PlaceSettings;
import org.moultwright.settings.SettingsFile;

/**
 * Puts the language and the forms of a desk into force, before any class of it that holds texts is loaded. In English
 * nothing is read but the settings.
 */
final class DeskLanguage {
    /** The folder of a keeper's own translations, beside the settings. */
    static final String FOLDER = "languages";

    private DeskLanguage() {}

    /** The locale of the machine, whatever the program has made its own. */
    static Locale machine() {
        return new Locale.Builder()
                .setLanguage(System.getProperty("user.language", ""))
                .setRegion(System.getProperty("user.country", ""))
                .build();
    }

    /** Speaks as the keeper chose; what hindered it, in a sentence, where it stays English. */
    static Optional<String> speak(PlaceSettings place, SettingsFile file) {
        return speak(place, new Translations(file.beside(FOLDER)), machine());
    }

    static Optional<String> speak(PlaceSettings place, Translations translations, Locale machine) {
        Locale forms = place.formsOn(machine);
        Degrees.use(place.temperatureOn(machine));
        Numbers.use(forms);
        Optional<String> problem = Optional.empty();
        try {
            translations.find(place.languageOn(machine)).ifPresent(Texts::use);
        } catch (IllegalArgumentException | UncheckedIOException notUnderstood) {
            problem = Optional.of(String.valueOf(notUnderstood.getMessage()));
        }
        Language spoken = Texts.language();
        Dates.use(forms, spoken.locale());
        // What the toolkit writes for itself: menus of fields, months and first days of weeks in calendars.
        if (!spoken.locale().equals(Language.ENGLISH.locale())) {
            Locale.setDefault(Locale.Category.DISPLAY, spoken.locale());
        }
        if (!forms.getCountry().isEmpty()) {
            Locale.setDefault(
                    Locale.Category.FORMAT,
                    new Locale.Builder()
                            .setLanguage(spoken.locale().getLanguage())
                            .setRegion(forms.getCountry())
                            .build());
        }
        return problem;
    }
}

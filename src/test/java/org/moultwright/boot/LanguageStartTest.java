package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.language.Dates;
import org.moultwright.language.Degrees;
import org.moultwright.language.Language;
import org.moultwright.language.Numbers;
import org.moultwright.language.TemperatureUnit;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
import org.moultwright.settings.PlaceSettings;
import org.moultwright.store.ChildJvm;

class LanguageStartTest {
    private static final Locale DISPLAY = Locale.getDefault(Locale.Category.DISPLAY);
    private static final Locale FORMAT = Locale.getDefault(Locale.Category.FORMAT);

    @TempDir
    private Path folder;

    @AfterEach
    void homeAgain() {
        Locale.setDefault(Locale.Category.DISPLAY, DISPLAY);
        Locale.setDefault(Locale.Category.FORMAT, FORMAT);
        Texts.use(Language.ENGLISH);
        Numbers.use(Locale.ROOT);
        Dates.use(Locale.ROOT, Locale.ENGLISH);
        Degrees.use(TemperatureUnit.CELSIUS);
    }

    /** In a Java machine of its own, where no text was loaded before. */
    @Test
    void constantsAreInTheLanguageChosen() throws Exception {
        Process child = ChildJvm.start(LanguageStart.class, folder.toString());
        assertThat(child.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(child.exitValue()).isZero();
    }

    @Test
    void withoutAChoiceTheMachineDecides() {
        speak(PlaceSettings.DEFAULT, Locale.US);
        assertThat(Degrees.unit()).isEqualTo(TemperatureUnit.FAHRENHEIT);
        assertThat(Texts.language()).isEqualTo(Language.ENGLISH);
        speak(PlaceSettings.DEFAULT, Locale.GERMANY);
        assertThat(Degrees.unit()).isEqualTo(TemperatureUnit.CELSIUS);
        assertThat(Numbers.fixed(27.5, 1)).isEqualTo("27,5");
        speak(PlaceSettings.DEFAULT, Locale.ENGLISH);
        assertThat(Numbers.fixed(27.5, 1)).isEqualTo("27.5");
    }

    @Test
    void aTranslationNotUnderstoodIsToldOfAndTheDeskSpeaksEnglish() throws IOException {
        Files.write(folder.resolve("fr.po"), List.of("nonsense"));
        assertThat(speak(PlaceSettings.DEFAULT.withLanguage("fr"), Locale.ENGLISH))
                .contains("line 1 holds 'nonsense', which is not understood");
        assertThat(Texts.language()).isEqualTo(Language.ENGLISH);
    }

    private Optional<String> speak(PlaceSettings place, Locale machine) {
        return DeskLanguage.speak(place, new Translations(folder), machine);
    }
}

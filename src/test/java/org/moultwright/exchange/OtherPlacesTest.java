package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Dates;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.TemperatureUnit;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;

/**
 * What is kept is the same wherever it is kept: a decimal comma, a dotless i, other digits and °F change no byte of a
 * file and no key.
 */
class OtherPlacesTest {
    private static final Locale MACHINE = Locale.getDefault();

    private final PlainBroodFolders folders = new PlainBroodFolders();

    @TempDir
    private Path temporary;

    @AfterEach
    void homeAgain() {
        live(MACHINE, Locale.ROOT, TemperatureUnit.CELSIUS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
    void filesAndKeysAreTheSame(String tag) throws IOException {
        for (long seed = 1; seed <= 5; seed++) {
            Map<String, String> here = kept("here-" + seed, seed);
            Locale there = Locale.forLanguageTag(tag);
            live(there, there, TemperatureUnit.FAHRENHEIT);
            assertThat(kept("there-" + seed, seed)).isEqualTo(here);
            homeAgain();
        }
    }

    private static void live(Locale locale, Locale forms, TemperatureUnit unit) {
        Locale.setDefault(locale);
        Numbers.use(forms);
        Dates.use(forms, Locale.ENGLISH);
        Degrees.use(unit);
    }

    /** All that is kept of a brood, of settings, of codes: by file or name. */
    private Map<String, String> kept(String name, long seed) throws IOException {
        Map<String, String> kept = new TreeMap<>();
        BroodRecord record = RandomRecords.record(seed);
        Path folder = temporary.resolve(name);
        folders.write(record, folder);
        SettingsFile settings = new SettingsFile(folder.resolve("settings.txt"));
        settings.save(Settings.DEFAULT);
        assertThat(settings.load().settings()).isEqualTo(Settings.DEFAULT);
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                kept.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        PotCode code = new PotCode("26BA-007");
        assertThat(PotCode.read(code.text().toLowerCase(Locale.ROOT)).symbols()).contains(code.symbols());
        kept.put("code", code.text());
        for (LabelSheet sheet : LabelSheets.everything()) {
            kept.put("sheet " + kept.size(), sheet.code());
        }
        kept.put("paper", Paper.A4.key());
        return kept;
    }
}

package org.moultwright.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TranslationFileTest {
    private static final String GERMAN = """
            # a comment
            msgid ""
            msgstr ""
            "Language: de\\n"
            "Plural-Forms: nplurals=2; plural=n != 1;\\n"

            #: org/moultwright/ui/any.java
            msgid "{0} of {1}"
            msgstr "von {1} {0}"

            msgid "said \\"so\\"\\n"
            "on two lines"
            msgstr "so gesagt"

            msgid "1 tray"
            msgid_plural "{0} trays"
            msgstr[0] "1 Schale"
            msgstr[1] "{0} Schalen"

            #, fuzzy
            msgid "Close"
            msgstr "Ungefähr"

            msgid "Open"
            msgstr ""
            """;

    @TempDir
    private Path folder;

    @AfterEach
    void speakEnglishAgain() {
        Texts.use(Language.ENGLISH);
    }

    @Test
    void placesMayChangeTheirOrder() {
        Texts.use(german());
        assertThat(Texts.say("{0} of {1}", 3, "A4")).isEqualTo("von A4 3");
        assertThat(Texts.say("said \"so\"\non two lines")).isEqualTo("so gesagt");
    }

    @Test
    void countsTakeTheFormsOfTheLanguage() {
        Texts.use(german());
        assertThat(Texts.count(1, "1 tray", "{0} trays", 1)).isEqualTo("1 Schale");
        assertThat(Texts.count(5, "1 tray", "{0} trays", 5)).isEqualTo("5 Schalen");
    }

    @Test
    void whatIsDoubtfulOrEmptyStaysEnglish() {
        Texts.use(german());
        assertThat(Texts.say("Close")).isEqualTo("Close");
        assertThat(Texts.say("Open")).isEqualTo("Open");
        assertThat(Texts.say("never seen")).isEqualTo("never seen");
        assertThat(Texts.count(2, "1 pot", "{0} pots", 2)).isEqualTo("2 pots");
    }

    @Test
    void inEnglishTheTextIsItself() {
        assertThat(Texts.say("{0} of {1}, {0} {7} {x} {", 1, null)).isEqualTo("1 of null, 1 {7} {x} {");
        assertThat(Texts.say("a {0} without its place")).isEqualTo("a {0} without its place");
        assertThat(Texts.count(1, "1 tray", "{0} trays", 1)).isEqualTo("1 tray");
        assertThat(Texts.count(0, "1 tray", "{0} trays", 0)).isEqualTo("0 trays");
    }

    @Test
    void anErrorNamesItsLine() {
        assertThatThrownBy(() -> TranslationFile.read(List.of("msgid \"\"", "msgstr \"Language: de\\n\"", "nonsense")))
                .hasMessage("line 3 holds 'nonsense', which is not understood");
        assertThatThrownBy(() -> TranslationFile.read(List.of("msgid \"a\"", "msgstr \"b\"")))
                .hasMessageContaining("must name its Language");
    }

    @Test
    void aKeepersFileIsFoundByItsTagOrItsLanguage() throws IOException {
        Files.writeString(folder.resolve("de.po"), GERMAN);
        Translations translations = new Translations(folder);
        assertThat(translations.own()).containsExactly("de");
        assertThat(translations.find(Locale.forLanguageTag("de-AT")))
                .hasValueSatisfying(found -> assertThat(found.texts()).isEqualTo(german().texts()));
        assertThat(translations.find(Locale.FRENCH)).isEmpty();
        assertThat(new Translations(folder.resolve("none")).own()).isEmpty();
    }

    private static Language german() {
        return TranslationFile.read(GERMAN.lines().toList());
    }
}

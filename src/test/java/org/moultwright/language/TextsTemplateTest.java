package org.moultwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What translators are given is what the program says. */
class TextsTemplateTest {
    @Test
    void templateHoldsEveryText() throws IOException {
        assertThat(Files.readAllLines(TextsTemplate.KEPT))
                .as("%s is stale: run TextsTemplate from the test class path", TextsTemplate.KEPT)
                .isEqualTo(TextsTemplate.lines());
    }

    @Test
    void noTextHasTwoPlurals() throws IOException {
        assertThat(TextsTemplate.texts().keySet().stream()
                        .flatMap(text -> text.plural().stream())
                        .collect(Collectors.groupingBy(many -> many, Collectors.counting()))
                        .values())
                .allMatch(count -> count == 1);
    }

    /** What another text is to be glued to can be put in order by no language. */
    @Test
    void noTextIsAPieceOfASentence() throws IOException {
        Pattern piece = Pattern.compile("^\\s|\\s$|[\\p{L}}][,;]$|\\}\\{|\\}\\p{L}|\\p{L}\\{");
        assertThat(TextsTemplate.texts().keySet().stream()
                        .flatMap(text -> Stream.concat(Stream.of(text.text()), text.plural().stream()))
                        .filter(text -> piece.matcher(text).find()))
                .isEmpty();
    }

    /** A translated name of a typeface is the name of none. */
    @Test
    void noNameOfATypefaceIsTranslated() throws IOException {
        assertThat(TextsTemplate.texts().keySet()).noneMatch(text -> text.text().startsWith("Open Sans"));
    }

    @Test
    void aFilledTemplateIsRead() throws IOException {
        Language pseudo = PseudoLanguage.made();
        assertThat(pseudo.of("Settings")).startsWith("«").endsWith("»").isNotEqualTo("«Settings»");
        assertThat(pseudo.of(1, "1 animal", "{0} animals")).startsWith("«");
        assertThat(pseudo.of("A text nobody says")).isEqualTo("A text nobody says");
    }
}

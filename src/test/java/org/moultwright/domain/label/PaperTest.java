package org.moultwright.domain.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PaperTest {
    /** Unicode Technical Standard 35 (CLDR 46), part 6, supplemental data: {@code paperSize type="US-Letter"}. */
    @Test
    void letterIsUsualWhereTheStandardSaysSoAndA4ElseWhere() {
        String letter = "BZ CA CL CO CR GT MX NI PA PH PR SV US VE";
        assertThat(Stream.of(Locale.getISOCountries()).filter(country -> usual(country) == Paper.LETTER))
                .containsExactlyInAnyOrder(letter.split(" "));
        assertThat(usual("")).isEqualTo(Paper.A4);
    }

    private static Paper usual(String country) {
        return Paper.usual(
                new Locale.Builder().setLanguage("en").setRegion(country).build());
    }
}

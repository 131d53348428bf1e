package org.moultwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Numbers and days as places write them; the patterns are those of the Java library's locale data (CLDR). */
class FormsTest {
    private static final LocalDateTime EVENING = LocalDateTime.of(2026, 5, 3, 20, 41);

    @AfterEach
    void plainAgain() {
        Numbers.use(Locale.ROOT);
        Dates.use(Locale.ROOT, Locale.ENGLISH);
    }

    @Test
    void theProgramsOwnForms() {
        assertThat(Numbers.fixed(27.46, 1)).isEqualTo("27.5");
        assertThat(Numbers.grouped(1234567)).isEqualTo("1,234,567");
        assertThat(Numbers.shortest(27, 2)).isEqualTo("27");
        assertThat(Numbers.shortest(120, 2)).isEqualTo("120");
        assertThat(Numbers.shortest(0.25, 2)).isEqualTo("0.25");
        assertThat(Dates.longDay().format(EVENING)).isEqualTo("Sunday 3 May");
        assertThat(Dates.clock().format(EVENING)).isEqualTo("20:41");
    }

    @Test
    void germanForms() {
        Numbers.use(Locale.GERMANY);
        Dates.use(Locale.GERMANY, Locale.GERMANY);
        assertThat(Numbers.fixed(27.46, 1)).isEqualTo("27,5");
        assertThat(Numbers.grouped(1234567)).isEqualTo("1.234.567");
        assertThat(Numbers.signed(-0.25, 2)).isEqualTo("-0,25");
        assertThat(Dates.day().format(EVENING)).isEqualTo("3. Mai");
        assertThat(Dates.longDay().format(EVENING)).isEqualTo("Sonntag, 3. Mai");
        assertThat(Dates.firstDayOfWeek()).isEqualTo(DayOfWeek.MONDAY);
    }

    @Test
    void americanForms() {
        Dates.use(Locale.US, Locale.ENGLISH);
        assertThat(Dates.day().format(EVENING)).isEqualTo("May 3");
        assertThat(Dates.dayAndYear().format(EVENING)).isEqualTo("May 3, 2026");
        assertThat(Dates.clock().format(EVENING)).matches("8:41\\hPM");
        assertThat(Dates.firstDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
        assertThat(Dates.monthStandsFirst()).isTrue();
    }

    @Test
    void otherDigits() {
        Numbers.use(Locale.forLanguageTag("ar-EG"));
        assertThat(Numbers.fixed(27.5, 1)).isEqualTo("٢٧٫٥");
        assertThat(Numbers.shown(12)).isEqualTo("١٢");
    }

    @Test
    void everyPlaceSaysDayAndMonthWithoutTheYear() {
        for (Locale locale : Locale.getAvailableLocales()) {
            Dates.use(locale, Locale.ENGLISH);
            LocalDate day = LocalDate.of(2031, 5, 17);
            assertThat(Dates.day().format(day))
                    .as("%s", locale)
                    .doesNotContain("2031")
                    .matches(said -> said.contains("May") || said.contains("5") || !said.matches(".*[0-9].*"));
            assertThat(Dates.dayAndYear().format(day)).as("%s", locale).isNotBlank();
            assertThat(Dates.clock().format(EVENING)).as("%s", locale).isNotBlank();
        }
    }
}

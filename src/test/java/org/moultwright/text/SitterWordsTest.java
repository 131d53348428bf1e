package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.domain.Stage;

/** What a sitter is told of a tray from the ninth to the sixteenth of May. */
class SitterWordsTest {
    private final SitterWords words = new SitterWords(Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneOffset.UTC));

    @Test
    void whatFallsOnThoseDaysIsExpected() {
        assertThat(told(0, 11, 13, 20)).isEqualTo("Expect: first slings 10 to 12 May, half are slings 12 to 14 May.");
        assertThat(told(3, 5, 13, 20)).isEqualTo("Slings are in it already. Expect: half are slings 12 to 14 May.");
    }

    @Test
    void whatIsOverBeforeIsSaidToBeOver() {
        assertThat(told(0, 5, 20, 22)).isEqualTo("The first slings come before 9 May.");
        assertThat(told(20, 3, 5, 20)).isEqualTo("Half are slings before 9 May.");
        assertThat(told(49, 1, 3, 6)).isEqualTo("Nearly all are slings before 9 May.");
    }

    @Test
    void onlyWhatIsNotKnownIsTooEarly() {
        assertThat(words.expected(Optional.empty(), Optional.empty(), day(9), day(17)))
                .isEqualTo("Too early to say. Look well.");
        assertThat(told(0, 25, 27, 29)).isEqualTo("Nothing special.");
    }

    @Test
    void theDayToCallStandsBeforeWhatItIsFor() {
        assertThat(words.expected(Optional.of(moult(20, 3, 5, 20)), Optional.of(day(10)), day(9), day(17)))
                .endsWith("From 10 May on they may have to be kept apart: call that day.");
    }

    private String told(double passed, int first, int half, int most) {
        return words.expected(Optional.of(moult(passed, first, half, most)), Optional.empty(), day(9), day(17));
    }

    private static MoultForecast moult(double passed, int first, int half, int most) {
        return new MoultForecast(Stage.INSTAR2, passed, around(first), around(half), around(most));
    }

    private static InstantInterval around(int day) {
        return new InstantInterval(day(day - 1), day(day), day(day + 1));
    }

    private static Instant day(int ofMay) {
        return LocalDate.of(2026, 5, 1).plusDays(ofMay - 1L).atStartOfDay().toInstant(ZoneOffset.UTC);
    }
}

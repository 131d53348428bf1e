package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Stage;

/** What is said where a plain window would be read the wrong way. */
class ForecastWordsTest {
    private static final Instant NOW = Instant.parse("2026-04-20T20:00:00Z");

    private final ForecastWords words = new ForecastWords(Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneOffset.UTC));

    @Test
    void whatIsMoreThanAYearAwayHasNoDays() {
        TrayForecast tray = tray(60, "2033-07-14T00:00:00Z", "2036-04-01T00:00:00Z", "2036-04-14T00:00:00Z");
        assertThat(words.sentence(tray, NOW)).isEqualTo("A: half are slings in more than a year, if at all.");
        assertThat(words.phrase(tray, NOW)).isEqualTo("half are slings in more than a year, if at all");
        assertThat(words.windows(tray.moults().get(0), NOW))
                .contains("half are slings: in more than a year, if at all");
        assertThat(words.separation(tray, NOW))
                .contains("A: first slings in more than a year, if at all. Separate within about a week of them.");
    }

    @Test
    void aWindowOfMostOfAYearNamesItsYears() {
        TrayForecast tray = tray(60, "2026-07-14T00:00:00Z", "2026-12-01T00:00:00Z", "2027-06-14T00:00:00Z");
        assertThat(words.sentence(tray, NOW)).isEqualTo("A: half are slings between 14 July 2026 and 14 June 2027.");
        assertThat(words.phrase(tray, NOW)).isEqualTo("half are slings 14 July 2026 to 14 June 2027");
    }

    @Test
    void overTheTurnOfAYearNoneIsNamed() {
        TrayForecast tray = tray(60, "2026-12-28T00:00:00Z", "2026-12-30T00:00:00Z", "2027-01-03T00:00:00Z");
        assertThat(words.sentence(tray, NOW)).isEqualTo("A: half are slings between 28 December and 3 January.");
    }

    @Test
    void ofAnEmptyTrayItIsNotTooEarlyToSay() {
        TrayForecast empty = new TrayForecast("A", 30, 0, List.of(), List.of());
        assertThat(words.sentence(empty, NOW)).isEqualTo("A: nothing to foretell.");
        assertThat(words.phrase(empty, NOW)).isEqualTo("nothing to foretell");
        TrayForecast young = new TrayForecast("A", 30, 1, List.of(), List.of());
        assertThat(words.sentence(young, NOW)).startsWith("A: Too early to say");
    }

    @Test
    void oneSlingIsOne() {
        assertThat(words.stages(new CountInterval(1, 1, 1), Stage.INSTAR2)).isEqualTo("sling");
        assertThat(words.stages(new CountInterval(0, 1, 1), Stage.INSTAR2)).isEqualTo("slings");
    }

    private static TrayForecast tray(int alive, String p10, String p50, String p90) {
        InstantInterval when = new InstantInterval(Instant.parse(p10), Instant.parse(p50), Instant.parse(p90));
        return new TrayForecast(
                "A", 10, alive, List.of(new MoultForecast(Stage.INSTAR2, 0, when, when, when)), List.of());
    }
}

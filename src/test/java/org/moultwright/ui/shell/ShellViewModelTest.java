package org.moultwright.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.shell.ShellViewModel.ProbeWords;

class ShellViewModelTest {
    private static final Instant NOW = Instant.parse("2026-05-03T20:41:00Z");

    private final ShellViewModel model = new ShellViewModel(new DayWords(ZoneOffset.UTC));

    @Test
    void readingsAgeWhileNothingIsWritten() {
        model.show(line(new TopLine.ProbeNow("box 1", 27, NOW.minusSeconds(40))), NOW);
        model.age(List.of(), NOW.plusSeconds(11 * 60));
        assertThat(model.probes()).containsExactly(new ProbeWords(Tone.WARN, "27.0 °C", "box 1, silent for 11 min"));
    }

    @Test
    void whatIsHeardSinceStandsAlsoWhenTheRoomIsReadAgain() {
        TopLine read = line(
                new TopLine.ProbeNow("box 1", 27, NOW.minusSeconds(40)),
                new TopLine.ProbeNow("box 2", 26, NOW.minusSeconds(40)));
        List<TopLine.ProbeNow> heard = List.of(
                new TopLine.ProbeNow("box 2", 19.2, NOW),
                new TopLine.ProbeNow("box 1", 12, NOW.minusSeconds(3600)),
                new TopLine.ProbeNow("box 3", 25, NOW));
        List<ProbeWords> now = List.of(
                new ProbeWords(Tone.OK, "27.0 °C", "box 1, 40 s ago"),
                new ProbeWords(Tone.OK, "19.2 °C", "box 2, 0 s ago"),
                new ProbeWords(Tone.OK, "25.0 °C", "box 3, 0 s ago"));
        model.show(read, NOW);
        model.age(heard, NOW);
        assertThat(model.probes()).isEqualTo(now);
        model.show(read, NOW);
        assertThat(model.probes()).isEqualTo(now);
    }

    private static TopLine line(TopLine.ProbeNow... probes) {
        return new TopLine(List.of(probes), Optional.empty(), Optional.empty());
    }
}

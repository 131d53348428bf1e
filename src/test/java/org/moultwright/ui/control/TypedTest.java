package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TypedTest {
    @Test
    void aNumberIsReadAsItIsMeant() {
        Map.of(
                        "27",
                        27.0,
                        "27.5",
                        27.5,
                        "27,5",
                        27.5,
                        "27.",
                        27.0,
                        "27,",
                        27.0,
                        ".5",
                        0.5,
                        " -1,5 ",
                        -1.5,
                        "\u22121.5",
                        -1.5,
                        "+0.30",
                        0.3,
                        "٢٧٫٥",
                        27.5)
                .forEach((typed, meant) ->
                        assertThat(Typed.number(typed)).as(typed).hasValue(meant));
    }

    @Test
    void whatIsNoNumberIsNone() {
        for (String typed : List.of("", " ", ".", ",", "-", "-.", "1.2.3", "1,234.5", "27 °C", "1e3", "NaN", "12345")) {
            assertThat(Typed.number(typed)).as(typed).isEmpty();
        }
    }
}

package org.moultwright.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.paint.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.settings.Theme;

class ContrastTest {
    /** WCAG 2.1, success criterion 1.4.3: text against its ground. */
    private static final double ENOUGH_FOR_TEXT = 4.5;

    private static final List<Token> GROUNDS = List.of(Token.BG, Token.SURFACE, Token.SUNK, Token.ACCENT_SOFT);

    static Stream<Arguments> pairs() {
        Stream<Arguments> everywhere = Stream.of(Token.INK, Token.MUTED, Token.ACCENT)
                .flatMap(text -> GROUNDS.stream().map(ground -> Arguments.of(text, ground)));
        Stream<Arguments> particular = Stream.of(
                Arguments.of(Token.ON_ACCENT, Token.ACCENT),
                Arguments.of(Token.INK, Token.WARN_SOFT),
                Arguments.of(Token.INK, Token.BAD_SOFT),
                Arguments.of(Token.WARN, Token.SURFACE),
                Arguments.of(Token.WARN, Token.BG),
                Arguments.of(Token.WARN, Token.WARN_SOFT),
                Arguments.of(Token.WARN, Token.ACCENT_SOFT),
                Arguments.of(Token.BAD, Token.SURFACE),
                Arguments.of(Token.BAD, Token.BG),
                Arguments.of(Token.BAD, Token.BAD_SOFT),
                Arguments.of(Token.OK, Token.SURFACE),
                Arguments.of(Token.OK, Token.BG),
                Arguments.of(Token.OK, Token.ACCENT_SOFT),
                Arguments.of(Token.BG, Token.INK));
        return Stream.concat(everywhere, particular);
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void textStandsOutFromItsGround(Token text, Token ground) {
        assertThat(Theme.values())
                .allSatisfy(theme -> assertThat(
                                Contrast.between(new Palette(theme).colour(text), new Palette(theme).colour(ground)))
                        .as("%s on %s in %s", text, ground, theme)
                        .isGreaterThanOrEqualTo(ENOUGH_FOR_TEXT));
    }

    @ParameterizedTest
    @MethodSource("everyToken")
    void styleSheetsReceiveTheSameColour(Token token) {
        assertThat(Theme.values()).allSatisfy(theme -> {
            String css = new Palette(theme).css(15);
            String written = css.split(token.cssName() + ": ", -1)[1].substring(0, 7);
            assertThat(Color.web(written)).isEqualTo(new Palette(theme).colour(token));
        });
    }

    static Stream<Token> everyToken() {
        return Arrays.stream(Token.values());
    }
}

package org.moultwright.domain.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HybridCheckTest {
    private static final String WITHOUT_LOOKALIKES = "23456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int BODY_LENGTH = 6;

    @ParameterizedTest
    @ValueSource(longs = {1, 20260503, -7})
    void catchesEverySingleSubstitution(long seed) {
        Random random = new Random(seed);
        for (HybridCheck check : new HybridCheck[] {new HybridCheck(WITHOUT_LOOKALIKES), PotAlphabet.CHECK}) {
            for (int i = 0; i < 300; i++) {
                String whole = anyCode(check, random);
                for (int at = 0; at < whole.length(); at++) {
                    for (char other : check.alphabet().toCharArray()) {
                        String wrong = whole.substring(0, at) + other + whole.substring(at + 1);
                        assertThat(check.holds(wrong))
                                .as("seed %d: %s read as %s", seed, whole, wrong)
                                .isEqualTo(wrong.equals(whole));
                    }
                }
            }
        }
    }

    /** The rates for six symbols and a check character; those of 30 symbols were computed independently. */
    @Test
    void catchesAlmostEverySwap() {
        assertThat(caughtSwaps(new HybridCheck(WITHOUT_LOOKALIKES), 1)).isCloseTo(0.998, within(0.0006));
        assertThat(caughtSwaps(new HybridCheck(WITHOUT_LOOKALIKES), 2)).isCloseTo(0.977, within(0.0015));
        assertThat(caughtSwaps(PotAlphabet.CHECK, 1)).isCloseTo(0.998, within(0.0006));
        assertThat(caughtSwaps(PotAlphabet.CHECK, 2)).isCloseTo(0.980, within(0.0015));
    }

    @Test
    void refusesAnAlphabetThatCannotPromiseThis() {
        assertThatIllegalArgumentException().isThrownBy(() -> new HybridCheck("ABC"));
        assertThatIllegalArgumentException().isThrownBy(() -> new HybridCheck("ABCA"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PotAlphabet.CHECK.checkCharacter("26O"))
                .withMessageContaining("'O'");
    }

    /** The share of swaps of two unlike symbols {@code distance} apart that the check notices. */
    private static double caughtSwaps(HybridCheck check, int distance) {
        Random random = new Random(37_36);
        int swaps = 0;
        int caught = 0;
        while (swaps < 200_000) {
            char[] symbols = anyCode(check, random).toCharArray();
            int at = random.nextInt(symbols.length - distance);
            char first = symbols[at];
            symbols[at] = symbols[at + distance];
            symbols[at + distance] = first;
            if (symbols[at] != first) {
                swaps++;
                caught += check.holds(new String(symbols)) ? 0 : 1;
            }
        }
        return (double) caught / swaps;
    }

    private static String anyCode(HybridCheck check, Random random) {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < BODY_LENGTH; i++) {
            body.append(check.alphabet().charAt(random.nextInt(check.alphabet().length())));
        }
        return body.toString() + check.checkCharacter(body.toString());
    }
}

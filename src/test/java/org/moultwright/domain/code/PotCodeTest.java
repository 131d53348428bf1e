package org.moultwright.domain.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.code.PotCodeReading.Reason;
import org.moultwright.domain.code.PotCodeReading.Refused;

class PotCodeTest {
    private static final PotCode FIRST = new PotCode("26A-001");

    @Test
    void isItsStemAndCheckCharacter() {
        assertThat(FIRST.text()).isEqualTo("26A-001-D");
        assertThat(FIRST.symbols()).isEqualTo("26A001D");
        assertThat(new PotCode("26-A001").symbols()).isEqualTo(FIRST.symbols());
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 99, 20260503})
    void readsBackWhateverItWrites(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            PotCode code = AnyPattern.anyCode(random);
            String text = code.text();
            String typed = text.toLowerCase(Locale.ROOT)
                    .replace('1', 'l')
                    .replace('0', 'o')
                    .replace("-", " ");
            assertThat(PotCode.read(text).symbols())
                    .as("seed %d: %s", seed, text)
                    .contains(code.symbols());
            assertThat(PotCode.read(typed).symbols())
                    .as("seed %d: %s", seed, typed)
                    .contains(code.symbols());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 77})
    void neverTakesOneWrongSymbolForAnotherPot(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            String text = AnyPattern.anyCode(random).symbols();
            int at = random.nextInt(text.length());
            for (char other : PotAlphabet.CHECK.alphabet().toCharArray()) {
                String wrong = text.substring(0, at) + other + text.substring(at + 1);
                assertThat(PotCode.read(wrong).symbols().isPresent())
                        .as("seed %d: %s read as %s", seed, text, wrong)
                        .isEqualTo(wrong.equals(text));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'', TOO_SHORT",
        "1-9, TOO_SHORT",
        "26A-0*1-N, UNKNOWN_SYMBOL",
        "26U-001-N, UNKNOWN_SYMBOL",
        "CC-26-A-001, WRONG_CHECK_CHARACTER",
        "26A-001-E, WRONG_CHECK_CHARACTER",
        "ABCDEF, OTHER_FORM",
        "1234567890123456789012, OTHER_FORM"
    })
    void saysWhatIsWrong(String typed, Reason reason) {
        assertThat(PotCode.read(typed)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.reason()).isEqualTo(reason);
            assertThat(refused.sentence()).endsWith(".");
        });
    }

    @Test
    void namesAMisreadCode() {
        String misread = FIRST.text().replace("001", "002");
        assertThat(PotCode.read(misread)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.reason()).isEqualTo(Reason.WRONG_CHECK_CHARACTER);
            assertThat(refused.sentence()).startsWith("'" + misread + "' is misread");
        });
    }

    @Test
    void countsFromOne() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CodeRun("26A-", "", 3).code(0))
                .withMessageContaining("number");
        assertThatIllegalArgumentException().isThrownBy(() -> new PotCode("26U-001"));
    }
}

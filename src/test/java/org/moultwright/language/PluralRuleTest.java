package org.moultwright.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The rules are those printed in the GNU gettext manual, section 11.2.6, "Additional functions for plural forms". */
class PluralRuleTest {
    @Test
    void germanicHasOneAndOther() {
        PluralRule rule = PluralRule.of("nplurals=2; plural=n != 1;");
        assertThat(forms(rule, 0, 1, 2, 21)).containsExactly(1, 0, 1, 1);
    }

    @Test
    void frenchCountsNoneAsOne() {
        PluralRule rule = PluralRule.of("nplurals=2; plural=n>1;");
        assertThat(forms(rule, 0, 1, 2)).containsExactly(0, 0, 1);
    }

    @Test
    void polishHasThree() {
        PluralRule rule =
                PluralRule.of("nplurals=3; plural=n==1 ? 0 : n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2;");
        assertThat(forms(rule, 1, 2, 4, 5, 12, 14, 22, 25, 102, 112)).containsExactly(0, 1, 1, 2, 2, 2, 1, 2, 1, 2);
    }

    @Test
    void slovenianHasFour() {
        PluralRule rule =
                PluralRule.of("nplurals=4; plural=n%100==1 ? 0 : n%100==2 ? 1 : n%100==3 || n%100==4 ? 2 : 3;");
        assertThat(forms(rule, 1, 101, 2, 3, 4, 5, 0)).containsExactly(0, 0, 1, 2, 2, 3, 3);
    }

    @Test
    void japaneseHasOne() {
        assertThat(forms(PluralRule.of("nplurals=1; plural=0;"), 0, 1, 7)).containsExactly(0, 0, 0);
    }

    @Test
    void whatIsNotUnderstoodIsRefused() {
        for (String text : new String[] {
            "", "nplurals=2", "nplurals=2; plural=m", "nplurals=2; plural=(n", "nplurals=2; plural=n n"
        }) {
            assertThatThrownBy(() -> PluralRule.of(text))
                    .as(text)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("Plural-Forms");
        }
        assertThatThrownBy(() -> PluralRule.of("nplurals=2; plural=n"))
                .hasMessage("Plural-Forms gives form 2 for 2 but there are 2");
    }

    private static int[] forms(PluralRule rule, int... counts) {
        return IntStream.of(counts).map(rule::of).toArray();
    }
}

package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.moultwright.store.ChildJvm;

/** In a Java machine of its own: a language is chosen before the first text is loaded. */
class PseudoSheetsTest {
    @Test
    void aWordySheetStaysOnItsPage() throws Exception {
        Process child = ChildJvm.start(PseudoSheets.class);
        assertThat(child.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assertThat(child.exitValue()).isZero();
    }
}

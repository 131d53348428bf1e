package org.moultwright.domain.label;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LabelStackTest {
    @Test
    void everyKnownSheetAndOnesOwnReadBackAsWritten() {
        LabelSheet own = new LabelSheet(PageSize.of(150, 99.5), 2, 3, 50.25, 20, 4.5, 3, 60, 25.125);
        assertThat(LabelSheets.everything()).allSatisfy(sheet -> requireReadBack(sheet));
        requireReadBack(own);
    }

    @Test
    void whatMakesNoStackIsNone() {
        String written = LabelStack.NEW.written();
        assertThat(written).isEqualTo("210 297 3 8 70 37 0.5 0 70 37 1 0 0");
        assertThat(LabelStack.read(written + " square")).isEmpty();
        assertThat(LabelStack.read(written.replace("210", "100"))).isEmpty();
        assertThat(LabelStack.read(written.replace("37 1 0 0", "37 25 0 0"))).isEmpty();
        assertThat(LabelStack.read(written.replace("1 0 0", "1 0 6"))).isEmpty();
        assertThat(LabelStack.read(written.replace("210", "wide"))).isEmpty();
        assertThat(LabelStack.read("")).isEmpty();
    }

    private static void requireReadBack(LabelSheet sheet) {
        LabelStack stack = new LabelStack(sheet, sheet.cells(), new PrintShift(0.4, -1.5));
        assertThat(LabelStack.read(stack.written())).contains(stack);
    }
}

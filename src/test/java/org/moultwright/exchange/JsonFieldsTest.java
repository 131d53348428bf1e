package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class JsonFieldsTest {
    @Test
    void aDocumentBrokenOffIsToldByItsLineAlone() throws IOException {
        Problems problems = new Problems();
        assertThat(JsonFields.parse("timings.json", "{ \"timings\":\n[ {\"taxon\": 5", problems))
                .isEmpty();
        assertThat(problems.list()).singleElement().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo(2);
            assertThat(problem.expected()).isEqualTo("JSON; Unexpected end-of-input: expected close marker for Object");
        });
    }
}

package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.css.CssParser;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Fails a test in which the toolkit met a style it could not make out: a rule it could not read, or a colour that is not
 * to be found where a node was styled. To be named after the extension that starts the toolkit.
 */
final class StyleFaults implements BeforeEachCallback, AfterEachCallback {
    @Override
    public void beforeEach(ExtensionContext test) {
        taken();
    }

    @Override
    public void afterEach(ExtensionContext test) {
        assertThat(taken()).as("styles the toolkit could not make out").isEmpty();
    }

    /** What it met since it was last asked, once each. The toolkit keeps such faults only from the first question on. */
    private static List<String> taken() {
        return ToolkitThread.ask(() -> {
            List<String> faults = CssParser.errorsProperty().stream()
                    .map(CssParser.ParseError::getMessage)
                    .distinct()
                    .toList();
            CssParser.errorsProperty().clear();
            return faults;
        });
    }
}

package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.workflow.FormDraft;

class FormDraftsFileTest {
    private static final List<FormDraft> TWO = List.of(
            new FormDraft("sac", "", Map.of("code", "GP-26-", "laid", "31.2.")),
            new FormDraft("opening", "GP \"26\"\nA", Map.of("infertile", "4")));

    @TempDir
    private Path folder;

    @Test
    void whatIsKeptIsReadAgain() {
        DraftsFile.ofForms(place()).keep(TWO);
        assertThat(DraftsFile.ofForms(place()).load().drafts()).isEqualTo(TWO);
        DraftsFile.ofForms(place()).keep(List.of());
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "{\"format\":\"moultwright-sheets/1\",\"sheets\":[]}",
                "{\"format\":\"moultwright-forms/1\",\"forms\":[{\"form\":\"sac\"}]}",
                "{\"format\":\"moultwright-forms/1\",\"forms\":[{\"form\":\"sac\",\"about\":\"\",\"fields\":{\"a\":1}}]}"
            })
    void whatIsNotUnderstoodIsSetAside(String content) throws IOException {
        Files.writeString(place(), content);
        DraftsFile.Loaded<FormDraft> loaded = DraftsFile.ofForms(place()).load();
        assertThat(loaded.drafts()).isEmpty();
        assertThat(loaded.problem()).isPresent();
        assertThat(folder.resolve("own.forms.not-understood-1")).hasContent(content);
    }

    private Path place() {
        return folder.resolve("own.forms");
    }
}

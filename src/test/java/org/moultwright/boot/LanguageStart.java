package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.moultwright.boot.command.Commands;
import org.moultwright.device.DeviceException;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Stage;
import org.moultwright.language.PseudoLanguage;
import org.moultwright.language.Texts;
import org.moultwright.settings.PlaceSettings;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.StoreException;
import org.moultwright.text.SitterWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.DocumentException;

/** Starts as the program does: the command line first, then the language, and fails where a constant is English. */
final class LanguageStart {
    private LanguageStart() {}

    /** Argument: an empty folder. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Path languages = Files.createDirectories(folder.resolve(DeskLanguage.FOLDER));
        Files.write(languages.resolve("en-x-pseudo.po"), PseudoLanguage.lines());
        SettingsFile settings = new SettingsFile(folder.resolve("settings.txt"));
        settings.save(Settings.DEFAULT.withPlace(new PlaceSettings("en-x-pseudo", "de-DE", Optional.empty())));
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        Commands.run(new OpenWorkbench((fault, opening) -> {}), nowhere, nowhere, "--help");

        assertThat(DeskLanguage.speak(settings.glance().place(), settings)).isEmpty();
        assertThat(StoreException.Reason.values()).allMatch(reason -> isSaid(reason.remedy()));
        assertThat(DeviceException.Reason.values()).allMatch(reason -> isSaid(reason.remedy()));
        assertThat(DocumentException.Reason.values()).allMatch(reason -> isSaid(reason.remedy()));
        assertThat(SitterWords.NEVER).allMatch(LanguageStart::isSaid);
        assertThat(isSaid(DemoDoor.TITLE)).isTrue();
        assertThat(Vocabulary.ENGLISH_HOBBY.plural(Stage.INSTAR2)).startsWith(PseudoLanguage.OPEN);
        assertThat(Cause.MOULD.words()).as("what is kept").isEqualTo("mould");
        assertThat(Texts.say(Cause.MOULD.words())).startsWith(PseudoLanguage.OPEN);
    }

    private static boolean isSaid(String text) {
        return text.startsWith(PseudoLanguage.OPEN);
    }
}

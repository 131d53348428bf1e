package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class MigrationsTest {
    private static final String FIRST = "/org/moultwright/store/migration/V1__broods_and_readings.sql";

    @Test
    void theLatestVersionIsThatOfTheLastMigration() throws Exception {
        var folder = Path.of(MigrationsTest.class.getResource(FIRST).toURI()).getParent();
        try (var files = Files.list(folder)) {
            int last = files.map(file -> file.getFileName().toString())
                    .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                    .max()
                    .orElseThrow();
            assertThat(Migrations.OURS.latest()).isEqualTo(last);
        }
    }
}

package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.domain.BroodRecord;
import org.moultwright.store.file.ExactFilePath;
import org.moultwright.store.sql.Problem;
import org.moultwright.workflow.ReadingSource;

class StoreCheckStoreTest {
    private static final BroodRecord RECORD = SampleRecords.record(3);

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void makeStore() {
        file = folder.resolve("room.store");
        try (H2Store store = H2Store.open(file)) {
            store.book().takeIn(RECORD, ReadingSource.of(RECORD));
        }
    }

    @Test
    void aSoundStoreHasNoProblems() {
        StoreReport report = check(file);
        assertThat(report.problems()).isEmpty();
        assertThat(report.broods()).isEqualTo(1);
        assertThat(report.entries()).isEqualTo(RECORD.ledger().entries().size());
        assertThat(report.readings()).isEqualTo(607);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "update ledger_entry set animals = 100000 where from_account <> 'sac'|ledger_entry",
                "update ledger_entry set stage = 'imago' where row_no = 1|ledger_entry",
                "update reading_hour set readings = readings + 1 where hour_no = (select min(hour_no) from"
                        + " reading_hour)|reading_hour",
                "update reading_hour set hour_no = hour_no - 100000|reading_hour",
                "update reading_hour set series = x'0100'|reading_hour",
                "set referential_integrity false; delete from probe where code = 'P-1'|reading_hour",
                "insert into reading_row select probe_no, hour_no * 3600000, 1, 1, 'good', '' from reading_hour"
                        + "|reading_row"
            })
    void damageIsFoundAndNamed(String statement, String table) throws SQLException {
        run(statement);
        assertThat(check(file).problems()).extracting(Problem::table).contains(table);
    }

    @Test
    void aBackupIsAStoreAndRestoredOnlyToAFileThatIsNotThere() throws IOException {
        Path backup = folder.resolve("room.backup");
        Path restored = folder.resolve("restored.store");
        try (H2Store store = H2Store.open(file)) {
            store.backup(backup);
        }
        H2Store.restore(backup, restored);
        assertThat(check(restored)).isEqualTo(check(file));
        byte[] before = Files.readAllBytes(restored);
        assertThatThrownBy(() -> H2Store.restore(backup, restored))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("already a file");
        assertThat(restored).hasBinaryContent(before);
        assertThat(folder).isDirectoryNotContaining(path -> path.toString().matches(".*\\.(zip|copy)"));
    }

    @Test
    void aDamagedBackupIsNotRestored() throws IOException {
        Path backup = folder.resolve("room.backup");
        byte[] bytes = Files.readAllBytes(file);
        Files.write(backup, Arrays.copyOf(bytes, bytes.length / 2));
        assertThatThrownBy(() -> H2Store.restore(backup, folder.resolve("restored.store")))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("is damaged");
        assertThat(folder.resolve("restored.store")).doesNotExist();
    }

    private static StoreReport check(Path file) {
        try (H2Store store = H2Store.open(file)) {
            return store.check();
        }
    }

    private void run(String statements) throws SQLException {
        String url = "jdbc:h2:" + ExactFilePath.databaseName(file);
        try (Connection connection = DriverManager.getConnection(url, "moultwright", "");
                Statement statement = connection.createStatement()) {
            statement.execute(statements);
        }
    }
}

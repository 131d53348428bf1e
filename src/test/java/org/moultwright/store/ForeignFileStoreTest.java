package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.ExactFilePath;
import org.moultwright.workflow.ReadingSource;

/** Files that are no store, or a damaged one, are refused with a sentence and left byte for byte as they were. */
class ForeignFileStoreTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("keeper's room; 1.store");
    }

    @Test
    void randomBytes() throws IOException {
        byte[] bytes = new byte[20_000];
        new Random(1).nextBytes(bytes);
        Files.write(file, bytes);
        assertRefused(Reason.NOT_A_STORE, "is not a store");
    }

    @Test
    void aTextFile() throws IOException {
        Files.writeString(file, "time,tray,stage\n");
        assertRefused(Reason.NOT_A_STORE, "is not a store");
    }

    @Test
    void anEmptyFile() throws IOException {
        Files.createFile(file);
        assertRefused(Reason.NOT_A_STORE, "is not a store");
    }

    @Test
    void aFolder() throws IOException {
        Files.createDirectory(file);
        assertThat(refusal().reason()).isEqualTo(Reason.NOT_A_STORE);
        assertThat(file).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 0.5, 0.9})
    void aStoreCutShort(double share) throws IOException {
        makeStore();
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, (int) (whole.length * share)));
        assertRefused(Reason.DAMAGED, "is damaged");
    }

    @Test
    void aStoreWithItsPagesOverwritten() throws IOException {
        makeStore();
        byte[] bytes = Files.readAllBytes(file);
        Arrays.fill(bytes, 8192, bytes.length, (byte) 'x');
        Files.write(file, bytes);
        assertRefused(Reason.DAMAGED, "is damaged");
    }

    @Test
    void theDatabaseOfAnotherProgram() throws Exception {
        run("create table brood (code varchar)");
        assertRefused(Reason.NOT_A_STORE, "another program");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "create alias reach for 'java.lang.System.exit'",
                "create alias reach as 'String reach() { return System.getProperty(\"user.name\"); }'",
                "create force trigger reach before insert on brood call 'org.moultwright.store.NoSuchTrigger'",
                "create force linked table reach('', 'jdbc:h2:mem:elsewhere', '', '', 'x')",
                "create view reach as select * from brood",
                "create force aggregate reach for 'org.moultwright.store.NoSuchAggregate'",
                "alter table brood add column reach varchar default file_read('/etc/hostname', null)"
            })
    void aStoreWithSomethingThatCouldRun(String statement) throws Exception {
        makeStore();
        run(statement);
        assertRefused(Reason.NOT_A_STORE, "could run a program");
    }

    @Test
    void aStoreOfALaterVersion() throws Exception {
        makeStore();
        run("insert into \"moultwright_history\" select 99, '99', \"description\", \"type\","
                + " \"script\", \"checksum\", \"installed_by\", \"installed_on\", \"execution_time\", \"success\""
                + " from \"moultwright_history\" where \"installed_rank\" = 1");
        assertRefused(Reason.NEWER_SCHEMA, "version 99");
    }

    private void assertRefused(Reason reason, String words) throws IOException {
        byte[] before = Files.readAllBytes(file);
        StoreException refusal = refusal();
        assertThat(refusal)
                .hasMessageContaining(words)
                .hasMessageEndingWith(reason.remedy() + " [" + reason.code() + "]");
        assertThat(refusal.reason()).isEqualTo(reason);
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        try (Stream<Path> beside = Files.list(folder)) {
            assertThat(beside).containsExactly(file);
        }
    }

    private StoreException refusal() {
        return catchThrowableOfType(
                StoreException.class, () -> H2Store.open(file).close());
    }

    private void makeStore() {
        try (H2Store store = H2Store.open(file)) {
            store.book().takeIn(SampleRecords.record(1), ReadingSource.of(SampleRecords.record(1)));
        }
    }

    /** Does something to the file as another program would. */
    private void run(String statement) throws SQLException {
        String name = ExactFilePath.databaseName(file);
        try (Connection connection = DriverManager.getConnection("jdbc:h2:" + name, "moultwright", "");
                var run = connection.createStatement()) {
            run.execute(statement);
        }
    }
}

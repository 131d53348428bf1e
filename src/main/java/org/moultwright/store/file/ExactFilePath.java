package org.moultwright.store.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * Lets H2 keep a database in exactly the file the keeper named: H2 adds an ending to every name it is
 * given, and this takes it off again.
 */
public final class ExactFilePath extends FilePathWrapper {
    private static final String SCHEME = "exact";
    private static final String H2_ENDING = ".mv.db";

    static {
        FilePath.register(new ExactFilePath());
    }

    /** The name by which H2's own classes open this very file as a plain page file. */
    public static String pageFileName(Path file) {
        return databaseName(file) + H2_ENDING;
    }

    /** The name of the database kept in this very file. */
    public static String databaseName(Path file) {
        return SCHEME + ":" + escaped(file.toAbsolutePath().toString());
    }

    @Override
    public String getScheme() {
        return SCHEME;
    }

    @Override
    protected FilePath unwrap(String path) {
        String name = path.substring(getPrefix().length());
        return FilePath.get(
                unescaped(name.endsWith(H2_ENDING) ? name.substring(0, name.length() - H2_ENDING.length()) : name));
    }

    /** H2 counts on its ending where it gave one. */
    @Override
    public FilePath toRealPath() {
        String ending = name.endsWith(H2_ENDING) ? H2_ENDING : "";
        return getPath(getPrefix() + escaped(getBase().toRealPath().toString()) + ending);
    }

    /**
     * Where H2 lists a folder to find a database's files, it looks for its own ending. Files named after
     * another, with more behind it, are notes and copies beside a store.
     */
    @Override
    public List<FilePath> newDirectoryStream() {
        List<FilePath> files = getBase().newDirectoryStream();
        Set<String> names = files.stream().map(FilePath::toString).collect(Collectors.toSet());
        return files.stream()
                .map(FilePath::toString)
                .map(file -> getPrefix() + escaped(file) + (isBeside(file, names) ? "" : H2_ENDING))
                .<FilePath>map(this::getPath)
                .toList();
    }

    private static boolean isBeside(String file, Set<String> names) {
        for (int dot = file.lastIndexOf('.'); dot > 0; dot = file.lastIndexOf('.', dot - 1)) {
            if (names.contains(file.substring(0, dot))) {
                return true;
            }
        }
        return false;
    }

    /** A semicolon would end the name of the database and begin a setting. */
    private static String escaped(String name) {
        return name.replace("%", "%25").replace(";", "%3B");
    }

    private static String unescaped(String name) {
        return name.replace("%3B", ";").replace("%25", "%");
    }
}

package org.moultwright.benchmark;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The class path of this program as one of jars, for Java keeps no classes ready of folders. */
final class PackedPath {
    private static final String OF_THE_TOOLKIT = "javafx-";

    private PackedPath() {}

    /** As it is, but for its folders, which are packed into one. */
    static String packed(Path folder) {
        ToolProvider jar = ToolProvider.findFirst("jar").orElseThrow();
        List<String> places = new ArrayList<>();
        for (String place : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
            if (Files.isDirectory(Path.of(place))) {
                Path packed = folder.resolve(places.size() + ".jar");
                jar.run(System.out, System.err, "--create", "--file", packed.toString(), "-C", place, ".");
                places.add(packed.toString());
            } else {
                places.add(place);
            }
        }
        return String.join(File.pathSeparator, places);
    }

    /** The same, the toolkit laid out in a folder as in the program's own: beside its jars what Linux needs of them. */
    static String laidOut(String packed, Path folder) throws IOException {
        List<String> places = new ArrayList<>();
        for (String place : packed.split(File.pathSeparator, -1)) {
            Path jar = Path.of(place);
            if (jar.getFileName().toString().startsWith(OF_THE_TOOLKIT)) {
                Path copy = folder.resolve(jar.getFileName());
                Files.copy(jar, copy);
                unpackLibraries(copy);
                places.add(copy.toString());
            } else {
                places.add(place);
            }
        }
        return String.join(File.pathSeparator, places);
    }

    private static void unpackLibraries(Path jar) throws IOException {
        try (ZipFile whole = new ZipFile(jar.toFile())) {
            Enumeration<? extends ZipEntry> entries = whole.entries();
            while (entries.hasMoreElements()) {
                ZipEntry entry = entries.nextElement();
                if (entry.getName().endsWith(".so")) {
                    try (InputStream library = whole.getInputStream(entry)) {
                        Files.copy(library, jar.resolveSibling(entry.getName()));
                    }
                }
            }
        }
    }
}

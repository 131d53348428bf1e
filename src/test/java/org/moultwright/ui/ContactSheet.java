package org.moultwright.ui;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/** Pictures of one view side by side at half their size, so that all its rooms and both themes are seen at once. */
final class ContactSheet {
    private static final int CELL_WIDTH = 640;
    private static final int CELL_HEIGHT = 400;
    private static final int GAP = 8;

    private ContactSheet() {}

    /** One row for each list of pictures; what is not there is left out. */
    static void write(List<List<Path>> rows, Path file) {
        List<List<Path>> there = rows.stream()
                .map(row -> row.stream().filter(Files::exists).toList())
                .filter(row -> !row.isEmpty())
                .toList();
        if (there.isEmpty()) {
            return;
        }
        int columns = there.stream().mapToInt(List::size).max().orElseThrow();
        BufferedImage sheet = new BufferedImage(
                columns * (CELL_WIDTH + GAP) - GAP,
                there.size() * (CELL_HEIGHT + GAP) - GAP,
                BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = sheet.createGraphics();
        try {
            for (int row = 0; row < there.size(); row++) {
                for (int column = 0; column < there.get(row).size(); column++) {
                    Image small = ImageIO.read(there.get(row).get(column).toFile())
                            .getScaledInstance(CELL_WIDTH, CELL_HEIGHT, Image.SCALE_AREA_AVERAGING);
                    pen.drawImage(small, column * (CELL_WIDTH + GAP), row * (CELL_HEIGHT + GAP), null);
                }
            }
            Files.createDirectories(file.getParent());
            ImageIO.write(sheet, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            pen.dispose();
        }
    }
}

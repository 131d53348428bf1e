package org.moultwright.store.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.store.SamplePictures;
import org.moultwright.workflow.PagePicture;
import org.moultwright.workflow.PhotoException;
import org.moultwright.workflow.PhotoException.Reason;

/** Pictures kept under the name their content gives them, and those that are refused. */
class PhotoFolderTest {
    private static final int BLUE = 0x0000FF;
    private static final int RED_PART = 0xFF0000;

    @TempDir
    private Path temporary;

    private Path folder;
    private PhotoFolder photos;

    @BeforeEach
    void name() {
        folder = temporary.resolve("room.store.photos");
        photos = new PhotoFolder(folder);
    }

    @Test
    void aPictureIsKeptOnceUnderTheHashOfItsBytes() throws IOException {
        byte[] picture = SamplePictures.of("jpg", 400, 300, BLUE);
        Path file = Files.write(temporary.resolve("IMG 1.JPG"), picture);
        assertThat(photos.holds(file)).isFalse();
        String kept = photos.keep(file);
        assertThat(kept).matches("[0-9a-f]{64}\\.jpg");
        assertThat(photos.find(kept).orElseThrow()).hasBinaryContent(picture);
        assertThat(photos.keep(picture, "again")).isEqualTo(kept);
        assertThat(photos.holds(file)).isTrue();
        assertThat(inFolder()).containsExactly(kept);
    }

    /** The published SHA-256 of nothing, FIPS 180-4 example files of NIST, tells that names are what they say. */
    @Test
    void theNameIsSha256() {
        assertThat(ContentHash.of(new byte[0]))
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void aKeptFileThatWasDamagedIsMadeWholeByTheSamePicture() throws IOException {
        String kept = photos.keep(SamplePictures.gif(), "one");
        Files.writeString(folder.resolve(kept), "damaged");
        photos.keep(SamplePictures.gif(), "one");
        assertThat(folder.resolve(kept)).hasBinaryContent(SamplePictures.gif());
        assertThat(inFolder()).containsExactly(kept);
    }

    @Test
    void aPictureIsReadNoLargerThanAskedFor() {
        String kept = photos.keep(SamplePictures.of("png", 1200, 900, BLUE), "wide");
        PagePicture small = photos.look(kept, 160);
        assertThat(small.widthPixels()).isEqualTo(160);
        assertThat(small.heightPixels()).isEqualTo(120);
        assertThat(photos.look(kept, 5000).widthPixels()).isEqualTo(1200);
    }

    @Test
    void whatIsNoPictureIsRefusedAndNothingKept() throws IOException {
        PhotoException refusal = refusal("no picture".getBytes(StandardCharsets.UTF_8));
        assertThat(refusal.reason()).isEqualTo(Reason.UNREADABLE);
        assertThat(refusal.advice())
                .isEqualTo("'x' is no picture that can be read here. Save it as JPEG or PNG and attach that.");
        assertThat(inFolder()).isEmpty();
    }

    @Test
    void whatIsNoFileToReadIsSaidAsWhatItIs(@TempDir Path camera) throws IOException {
        assertThat(notTaken(Files.createDirectory(camera.resolve("of May.jpg"))))
                .isEqualTo("'of May.jpg' is a folder.");
        assertThat(notTaken(Files.createFile(camera.resolve("empty.jpg")))).isEqualTo("'empty.jpg' is empty.");
        assertThat(notTaken(camera.resolve("gone.jpg"))).isEqualTo("'gone.jpg' is not there any more.");
        Path locked = Files.write(camera.resolve("locked.jpg"), SamplePictures.gif());
        assertThat(locked.toFile().setReadable(false)).isTrue();
        if (!Files.isReadable(locked)) {
            assertThat(notTaken(locked)).isEqualTo("'locked.jpg' may not be read by you.");
        }
        assertThat(inFolder()).isEmpty();
    }

    private String notTaken(Path picture) {
        PhotoException refusal = catchThrowableOfType(PhotoException.class, () -> photos.keep(picture));
        assertThat(refusal.reason()).isEqualTo(Reason.NOT_A_FILE);
        return refusal.sentence();
    }

    @Test
    void aPictureCutOffIsRefused() throws IOException {
        byte[] whole = SamplePictures.of("jpg", 800, 600, BLUE);
        assertThat(refusal(Arrays.copyOf(whole, whole.length / 2)).reason()).isEqualTo(Reason.UNREADABLE);
        byte[] png = SamplePictures.of("png", 800, 600, BLUE);
        assertThat(refusal(Arrays.copyOf(png, png.length / 2)).reason()).isEqualTo(Reason.UNREADABLE);
        assertThat(inFolder()).isEmpty();
    }

    @Test
    void aPictureThatSaysItIsHugeIsRefusedByItsHead() {
        PhotoException refusal = refusal(withSize(SamplePictures.of("png", 10, 10, BLUE), 60_000, 50_000));
        assertThat(refusal.reason()).isEqualTo(Reason.TOO_LARGE);
        assertThat(refusal.sentence()).isEqualTo("'x' has 3000 million dots; 120 million are the most.");
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Files.writeString(folder, "a file in its place");
        assertThat(refusal(SamplePictures.gif()).reason()).isEqualTo(Reason.NOT_WRITABLE);
    }

    @Test
    void aPictureThatIsGoneIsSaid() throws IOException {
        String kept = photos.keep(SamplePictures.gif(), "one");
        Files.delete(folder.resolve(kept));
        PhotoException refusal = catchThrowableOfType(PhotoException.class, () -> photos.look(kept, 100));
        assertThat(refusal.reason()).isEqualTo(Reason.MISSING);
    }

    /** Exif 2.3, tag 0x0112: 6 is a picture whose first row is its right side, 8 its left, 3 its bottom. */
    @Test
    void aPictureIsShownUpright() {
        assertThat(redCorner(1)).isEqualTo("upper left");
        assertThat(redCorner(2)).isEqualTo("upper right");
        assertThat(redCorner(3)).isEqualTo("lower right");
        assertThat(redCorner(4)).isEqualTo("lower left");
        assertThat(redCorner(6)).isEqualTo("upper right");
        assertThat(redCorner(8)).isEqualTo("lower left");
        assertThat(turned(6).heightPixels()).isEqualTo(400);
        assertThat(turned(5).heightPixels()).isEqualTo(400);
        assertThat(turned(9).heightPixels()).isEqualTo(200);
    }

    private String redCorner(int orientation) {
        PagePicture picture = turned(orientation);
        int wide = picture.widthPixels();
        int high = picture.heightPixels();
        for (String row : new String[] {"upper", "lower"}) {
            for (String side : new String[] {"left", "right"}) {
                int x = side.equals("left") ? wide / 8 : wide * 7 / 8;
                int y = row.equals("upper") ? high / 8 : high * 7 / 8;
                if ((picture.argb()[y * wide + x] & RED_PART) > 0x800000) {
                    return row + " " + side;
                }
            }
        }
        return "nowhere";
    }

    private PagePicture turned(int orientation) {
        byte[] jpeg = SamplePictures.of("jpg", 400, 200, BLUE);
        ByteBuffer exif = ByteBuffer.allocate(36);
        exif.putShort((short) 0xFFE1).putShort((short) 34).put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        exif.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        exif.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1);
        exif.putShort((short) orientation).putShort((short) 0).putInt(0);
        byte[] turned = ByteBuffer.allocate(jpeg.length + exif.position())
                .put(jpeg, 0, 2)
                .put(exif.array(), 0, exif.position())
                .put(jpeg, 2, jpeg.length - 2)
                .array();
        return photos.look(photos.keep(turned, "turned"), 1000);
    }

    /** The head of a PNG says its size: bytes 16 to 23, and a sum over the chunk, by the PNG specification. */
    private static byte[] withSize(byte[] png, int width, int height) {
        byte[] other = png.clone();
        ByteBuffer head = ByteBuffer.wrap(other);
        head.putInt(16, width).putInt(20, height);
        CRC32 sum = new CRC32();
        sum.update(other, 12, 17);
        head.putInt(29, (int) sum.getValue());
        return other;
    }

    private PhotoException refusal(byte[] picture) {
        return catchThrowableOfType(PhotoException.class, () -> photos.keep(picture, "x"));
    }

    private List<String> inFolder() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(path -> path.getFileName().toString()).toList();
        }
    }
}

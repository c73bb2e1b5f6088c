package padwright.drawing.java2d;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import padwright.drawing.scene.Bounds;
import padwright.drawing.scene.Picture;
import padwright.drawing.scene.PictureData;

class PictureFileTest {

	@TempDir
	private Path folder;

	private Path picture(String name, String format, int width, int height, Color colour) throws IOException {
		BufferedImage pixels = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = pixels.createGraphics();
		graphics.setColor(colour);
		graphics.fillRect(0, 0, width, height);
		graphics.dispose();
		Path file = folder.resolve(name);
		ImageIO.write(pixels, format, file.toFile());
		return file;
	}

	@Test
	void readsBothKindsWithTheirSizes() throws IOException {
		PictureData png = PictureFile.read(picture("a.png", "png", 40, 20, Color.RED));
		assertEquals("image/png 40 by 20", png.mediaType() + " " + png.width() + " by " + png.height());
		assertEquals("image/jpeg", PictureFile.read(picture("a.jpg", "jpeg", 40, 20, Color.RED)).mediaType());
		assertEquals(png, PictureFile.read(folder.resolve("a.png")));
		assertNotEquals(png, PictureFile.read(folder.resolve("a.jpg")));
	}

	@Test
	void keepsProportionsWithinItsRoom() throws IOException {
		PictureData wide = PictureFile.read(picture("wide.png", "png", 40, 20, Color.RED));
		assertEquals(new Bounds(1, 2, 30, 15), Picture.within(wide, 1, 2, 30, 100).bounds());
		assertEquals(new Bounds(1, 2, 20, 10), Picture.within(wide, 1, 2, 30, 10).bounds());
	}

	@Test
	void aThumbnailIsSmallAndStillLooksLikeIt() throws IOException {
		PictureData small = PictureFile.thumbnail(picture("large.jpg", "jpeg", 2000, 1000, Color.BLUE), 100);
		assertEquals("100 by 50", small.width() + " by " + small.height());
		assertTrue(small.file().length < 10_000);
		assertEquals("8 by 4", sizes(PictureFile.thumbnail(picture("tiny.png", "png", 8, 4, Color.BLUE), 100)));
	}

	private static String sizes(PictureData picture) {
		return picture.width() + " by " + picture.height();
	}

	@Test
	void whatIsNoPictureIsRefusedWithTheReason() throws IOException {
		Path words = Files.writeString(folder.resolve("words.png"), "no picture");
		assertEquals("it is no PNG or JPEG", refusal(words));
		byte[] whole = Files.readAllBytes(picture("whole.png", "png", 300, 300, Color.RED));
		Path half = Files.write(folder.resolve("half.png"), Arrays.copyOf(whole, whole.length / 2));
		assertEquals("it cannot be decoded", refusal(half));
		assertThrows(IOException.class, () -> PictureFile.read(folder.resolve("none.png")));
		assertThrows(IOException.class, () -> PictureFile.thumbnail(folder.resolve("none.png"), 100));
	}

	private static String refusal(Path file) {
		return assertThrows(IOException.class, () -> PictureFile.read(file)).getMessage();
	}
}

package padwright.drawing.java2d;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;

import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

import padwright.drawing.scene.PictureData;

/** Reads pictures from PNG and JPEG files. What is read can be drawn: it was decoded once. */
public final class PictureFile {

	/** More than this is no logo, and would make every paper as large. */
	private static final int MOST_BYTES = 2_000_000;
	private static final String PNG = "image/png";

	private PictureFile() {
	}

	/**
	 * The whole picture, for a paper.
	 *
	 * @throws IOException if there is no such file, or it is no picture, with the reason in words
	 */
	public static PictureData read(Path file) throws IOException {
		if (Files.size(file) > MOST_BYTES) {
			throw new IOException("it is larger than 2 MB");
		}
		byte[] bytes = Files.readAllBytes(file);
		try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
			ImageReader reader = reader(stream);
			try {
				BufferedImage decoded = decode(reader, 1);
				return new PictureData(bytes, mediaType(reader), decoded.getWidth(), decoded.getHeight());
			} finally {
				reader.dispose();
			}
		}
	}

	/**
	 * A picture made small, for a window; only as many pixels are read as that takes.
	 *
	 * @param most pixels of its longer side
	 * @throws IOException if there is no such file, or it is no picture, with the reason in words
	 */
	public static PictureData thumbnail(Path file, int most) throws IOException {
		try (ImageInputStream stream = ImageIO.createImageInputStream(file.toFile())) {
			if (stream == null) {
				throw new IOException("it cannot be read");
			}
			ImageReader reader = reader(stream);
			try {
				int longer = Math.max(reader.getWidth(0), reader.getHeight(0));
				return png(small(decode(reader, Math.max(1, longer / (2 * most))), most));
			} finally {
				reader.dispose();
			}
		}
	}

	private static ImageReader reader(ImageInputStream stream) throws IOException {
		Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
		while (readers.hasNext()) {
			ImageReader reader = readers.next();
			String format = reader.getFormatName();
			if (format.equalsIgnoreCase("png") || format.equalsIgnoreCase("jpeg")) {
				reader.setInput(stream, true, true);
				return reader;
			}
		}
		throw new IOException("it is no PNG or JPEG");
	}

	private static String mediaType(ImageReader reader) throws IOException {
		return reader.getFormatName().equalsIgnoreCase("png") ? PNG : "image/jpeg";
	}

	/** A file that is spoilt inside makes some readers throw what is not meant for files. */
	private static BufferedImage decode(ImageReader reader, int every) throws IOException {
		try {
			ImageReadParam sampled = reader.getDefaultReadParam();
			sampled.setSourceSubsampling(every, every, 0, 0);
			return reader.read(0, sampled);
		} catch (IOException | RuntimeException spoilt) {
			throw new IOException("it cannot be decoded", spoilt);
		}
	}

	private static BufferedImage small(BufferedImage picture, int most) {
		double scale = Math.min(1, most / (double) Math.max(picture.getWidth(), picture.getHeight()));
		int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
		int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
		BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = small.createGraphics();
		graphics.drawImage(picture.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING), 0, 0, null);
		graphics.dispose();
		return small;
	}

	private static PictureData png(BufferedImage picture) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		ImageIO.write(picture, "png", bytes);
		return new PictureData(bytes.toByteArray(), PNG, picture.getWidth(), picture.getHeight());
	}
}

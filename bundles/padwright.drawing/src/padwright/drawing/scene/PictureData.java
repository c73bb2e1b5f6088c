package padwright.drawing.scene;

import java.util.Arrays;
import java.util.Base64;

/** A picture of pixels as a PNG or JPEG file holds it. Equal where the files are. */
public final class PictureData {

	private final byte[] file;
	private final String mediaType;
	private final int width;
	private final int height;

	/**
	 * @param file what the file holds
	 * @param mediaType {@code image/png} or {@code image/jpeg}
	 * @param width pixels, more than 0
	 * @param height pixels, more than 0
	 * @throws IllegalArgumentException if it has no area
	 */
	public PictureData(byte[] file, String mediaType, int width, int height) {
		if (width <= 0 || height <= 0) {
			throw new IllegalArgumentException("a picture cannot be " + width + " by " + height + " pixels");
		}
		this.file = file.clone();
		this.mediaType = mediaType;
		this.width = width;
		this.height = height;
	}

	public byte[] file() {
		return file.clone();
	}

	/** The file as base64. */
	public String base64() {
		return Base64.getEncoder().encodeToString(file);
	}

	public String mediaType() {
		return mediaType;
	}

	/** Pixels. */
	public int width() {
		return width;
	}

	/** Pixels. */
	public int height() {
		return height;
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof PictureData picture && Arrays.equals(file, picture.file);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(file);
	}

	@Override
	public String toString() {
		return mediaType + " " + width + " by " + height + " " + hashCode();
	}
}

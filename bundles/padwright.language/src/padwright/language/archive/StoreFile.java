package padwright.language.archive;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;

import padwright.language.files.SafeFile;

/**
 * A file of a cache. It is written aside and moved into place, so that of two processes one after the other has its way.
 *
 * @param magic of its kind
 * @param version of what wrote it: another one may judge otherwise
 */
record StoreFile(Path file, int magic, String version) {

	private static final int FORMAT = 1;

	/** Takes what the file holds. */
	interface Reading {
		void read(DataInputStream in) throws IOException;
	}

	/** Gives what the file is to hold. */
	interface Writing {
		void write(DataOutputStream out) throws IOException;
	}

	/** Whether there is such a file of this kind and version, and nothing is wrong with it; else what was read is worth nothing. */
	boolean load(Reading reading) {
		try (CheckedInputStream checked = new CheckedInputStream(
				new BufferedInputStream(Files.newInputStream(file), 1 << 16), new CRC32())) {
			DataInputStream in = new DataInputStream(checked);
			if (in.readInt() != magic || in.readInt() != FORMAT || !ResultFormat.readText(in).equals(version)) {
				return false;
			}
			reading.read(in);
			long sum = checked.getChecksum().getValue();
			return in.readLong() == sum;
		} catch (IOException | RuntimeException | OutOfMemoryError spoilt) {
			return false;
		}
	}

	/**
	 * Writes the file, in one move.
	 *
	 * @throws IOException if it cannot be written; the former one is as it was then
	 */
	void save(Writing writing) throws IOException {
		Files.createDirectories(file.getParent());
		SafeFile.write(file, bytes(writing));
	}

	private byte[] bytes(Writing writing) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 20);
		DataOutputStream out = new DataOutputStream(new BufferedOutputStream(bytes));
		out.writeInt(magic);
		out.writeInt(FORMAT);
		ResultFormat.writeText(out, version);
		writing.write(out);
		out.flush();
		CRC32 sum = new CRC32();
		sum.update(bytes.toByteArray());
		out.writeLong(sum.getValue());
		out.flush();
		return bytes.toByteArray();
	}
}

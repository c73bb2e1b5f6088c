package padwright.language.archive;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Map;

/**
 * By what a file is known to be unchanged without reading it.
 *
 * @param size in bytes
 * @param stamp of its times, and which file it is where the system tells
 * @param settled whether it was left alone for so long that a change since would show in its times
 */
record FileStamp(long size, long stamp, boolean settled) {

	private static final long TICK_MILLIS = 2_000;
	private static final FileStamp NONE = new FileStamp(-1, -1, false);

	static FileStamp of(Path file) {
		try {
			return of(Files.readAttributes(file, "unix:size,lastModifiedTime,ctime,ino"));
		} catch (UnsupportedOperationException | IllegalArgumentException notUnix) {
			return ofTimes(file);
		} catch (IOException gone) {
			return NONE;
		}
	}

	private static FileStamp of(Map<String, Object> attributes) {
		long modified = ((FileTime) attributes.get("lastModifiedTime")).toMillis();
		long changed = ((FileTime) attributes.get("ctime")).toMillis();
		long stamp = 31 * (31 * modified + changed) + (Long) attributes.get("ino");
		return new FileStamp((Long) attributes.get("size"), stamp, isPast(Math.max(modified, changed)));
	}

	private static FileStamp ofTimes(Path file) {
		try {
			BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
			long modified = attributes.lastModifiedTime().toMillis();
			return new FileStamp(attributes.size(), modified, isPast(modified));
		} catch (IOException gone) {
			return NONE;
		}
	}

	static FileStamp read(DataInputStream in) throws IOException {
		return new FileStamp(in.readLong(), in.readLong(), in.readBoolean());
	}

	void write(DataOutputStream out) throws IOException {
		out.writeLong(size);
		out.writeLong(stamp);
		out.writeBoolean(settled);
	}

	private static boolean isPast(long millis) {
		return System.currentTimeMillis() - millis > TICK_MILLIS;
	}
}

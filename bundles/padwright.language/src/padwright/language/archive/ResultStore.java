package padwright.language.archive;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;

import padwright.language.files.SafeFile;

/**
 * Results of a former check, kept on disk so that the next looks only at what changed. Whatever is wrong with the file,
 * or if another version of the product wrote it, the store is empty. For one thread at a time.
 */
public final class ResultStore {

	private static final int MAGIC = 0x70616477;
	private static final int FORMAT = 1;

	private final Path file;
	private final String version;
	private final Map<String, StoredResult> results = new TreeMap<>();
	private boolean changed;

	private ResultStore(Path file, String version) {
		this.file = file;
		this.version = version;
	}

	/** @param version of the product: another one may judge otherwise */
	public static ResultStore open(Path file, String version) {
		ResultStore store = new ResultStore(file, version);
		store.load();
		return store;
	}

	/** A store that forgets everything. */
	public static ResultStore none() {
		return new ResultStore(null, "");
	}

	/** How many files have a result. */
	public int size() {
		return results.size();
	}

	StoredResult get(String path) {
		return results.get(path);
	}

	void put(String path, StoredResult result) {
		changed |= !result.equals(results.put(path, result));
	}

	/** Forgets all other files. */
	void retain(Set<String> paths) {
		changed |= results.keySet().retainAll(paths);
	}

	private void load() {
		try (CheckedInputStream checked = new CheckedInputStream(
				new BufferedInputStream(Files.newInputStream(file), 1 << 16), new CRC32())) {
			DataInputStream in = new DataInputStream(checked);
			if (in.readInt() == MAGIC && in.readInt() == FORMAT && ResultFormat.readText(in).equals(version)) {
				read(in, checked);
			}
		} catch (IOException | RuntimeException | OutOfMemoryError spoilt) {
			results.clear();
		}
	}

	private void read(DataInputStream in, CheckedInputStream checked) throws IOException {
		ResultFormat format = new ResultFormat();
		for (int left = in.readInt(); left > 0; left--) {
			results.put(ResultFormat.readText(in), format.read(in));
		}
		long sum = checked.getChecksum().getValue();
		if (in.readLong() != sum) {
			results.clear();
		}
	}

	/**
	 * Writes what changed, in one move.
	 *
	 * @throws IOException if the file cannot be written; the former one is as it was then
	 */
	public void save() throws IOException {
		if (file == null || !changed) {
			return;
		}
		Files.createDirectories(file.getParent());
		SafeFile.write(file, bytes());
		changed = false;
	}

	private byte[] bytes() throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 20);
		DataOutputStream out = new DataOutputStream(new BufferedOutputStream(bytes));
		out.writeInt(MAGIC);
		out.writeInt(FORMAT);
		ResultFormat.writeText(out, version);
		out.writeInt(results.size());
		for (Map.Entry<String, StoredResult> entry : results.entrySet()) {
			ResultFormat.writeText(out, entry.getKey());
			ResultFormat.write(out, entry.getValue());
		}
		out.flush();
		CRC32 sum = new CRC32();
		sum.update(bytes.toByteArray());
		out.writeLong(sum.getValue());
		out.flush();
		return bytes.toByteArray();
	}
}

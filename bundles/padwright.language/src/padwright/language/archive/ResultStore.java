package padwright.language.archive;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Results of a former check, kept on disk so that the next looks only at what changed. Whatever is wrong with the file,
 * or if another version of the product wrote it, the store is empty. For one thread at a time.
 */
public final class ResultStore {

	private static final int MAGIC = 0x70616477;

	private final StoreFile file;
	private final Map<String, StoredResult> results = new TreeMap<>();
	private boolean changed;

	private ResultStore(StoreFile file) {
		this.file = file;
	}

	/** @param version of the product: another one may judge otherwise */
	public static ResultStore open(Path file, String version) {
		ResultStore store = new ResultStore(new StoreFile(file, MAGIC, version));
		store.load();
		return store;
	}

	/** A store that forgets everything. */
	public static ResultStore none() {
		return new ResultStore(null);
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
		if (!file.load(this::read)) {
			results.clear();
		}
	}

	private void read(DataInputStream in) throws IOException {
		ResultFormat format = new ResultFormat();
		for (int left = in.readInt(); left > 0; left--) {
			results.put(ResultFormat.readText(in), format.read(in));
		}
	}

	/**
	 * Writes what changed, in one move.
	 *
	 * @throws IOException if the file cannot be written; the former one is as it was then
	 */
	public void save() throws IOException {
		if (file != null && changed) {
			file.save(this::write);
			changed = false;
		}
	}

	private void write(DataOutputStream out) throws IOException {
		out.writeInt(results.size());
		for (Map.Entry<String, StoredResult> entry : results.entrySet()) {
			ResultFormat.writeText(out, entry.getKey());
			ResultFormat.write(out, entry.getValue());
		}
	}
}

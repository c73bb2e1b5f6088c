package padwright.language.archive;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What was taken of the plans of a shop, kept on disk so that the next time only plans are read that changed. Whatever is
 * wrong with the file, or if another version of the product wrote it, the store is empty. For one thread at a time.
 *
 * @param <T> what is taken of one plan
 */
public final class FactStore<T> {

	private static final int MAGIC = 0x70616466;

	/** How facts are read from disk. */
	public interface Reading<T> {
		T read(DataInputStream in) throws IOException;
	}

	/** How facts are written to disk. */
	public interface Writing<T> {
		void write(DataOutputStream out, T fact) throws IOException;
	}

	/**
	 * What was taken of the plans of one file.
	 *
	 * @param stamp of the file when it was read
	 * @param hash of its content
	 * @param source whether other files may have links to it
	 * @param basis fingerprint of all sources then; empty for a file of which nothing was wanted
	 */
	record Kept<T>(FileStamp stamp, String hash, boolean source, String basis, List<T> facts) {

		Kept {
			facts = List.copyOf(facts);
		}

		/** Whether a file with this stamp has the same content for sure. */
		boolean holds(FileStamp now) {
			return stamp.settled() && now.equals(stamp);
		}
	}

	private final StoreFile file;
	private final Reading<T> reading;
	private final Writing<T> writing;
	private final Map<String, Kept<T>> kept = new TreeMap<>();
	private boolean changed;

	private FactStore(StoreFile file, Reading<T> reading, Writing<T> writing) {
		this.file = file;
		this.reading = reading;
		this.writing = writing;
	}

	/** @param version of the product and the language of its words: others may take other facts */
	public static <T> FactStore<T> open(Path file, String version, Reading<T> reading, Writing<T> writing) {
		FactStore<T> store = new FactStore<>(new StoreFile(file, MAGIC, version), reading, writing);
		if (!store.file.load(store::read)) {
			store.kept.clear();
		}
		return store;
	}

	/** A store that forgets everything. */
	public static <T> FactStore<T> none() {
		return new FactStore<>(null, null, null);
	}

	Kept<T> get(String path) {
		return kept.get(path);
	}

	void put(String path, Kept<T> facts) {
		changed |= !facts.equals(kept.put(path, facts));
	}

	/** A file that cannot be used is looked at each time. */
	void forget(String path) {
		changed |= kept.remove(path) != null;
	}

	/** Forgets all other files. */
	void retain(Set<String> paths) {
		changed |= kept.keySet().retainAll(paths);
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

	private void read(DataInputStream in) throws IOException {
		for (int left = in.readInt(); left > 0; left--) {
			String path = ResultFormat.readText(in);
			FileStamp stamp = FileStamp.read(in);
			String hash = ResultFormat.readText(in);
			boolean source = in.readBoolean();
			String basis = ResultFormat.readText(in);
			List<T> facts = new ArrayList<>();
			for (int more = in.readInt(); more > 0; more--) {
				facts.add(reading.read(in));
			}
			kept.put(path, new Kept<>(stamp, hash, source, basis, facts));
		}
	}

	private void write(DataOutputStream out) throws IOException {
		out.writeInt(kept.size());
		for (Map.Entry<String, Kept<T>> entry : kept.entrySet()) {
			Kept<T> of = entry.getValue();
			ResultFormat.writeText(out, entry.getKey());
			of.stamp().write(out);
			ResultFormat.writeText(out, of.hash());
			out.writeBoolean(of.source());
			ResultFormat.writeText(out, of.basis());
			out.writeInt(of.facts().size());
			for (T fact : of.facts()) {
				writing.write(out, fact);
			}
		}
	}
}

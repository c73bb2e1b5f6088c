package padwright.language.archive;

import java.lang.ref.SoftReference;
import java.nio.file.Path;
import java.util.Map;

/**
 * A file as it is now.
 *
 * @param path in the shop
 * @param stamp null where another text than that on disk counts
 * @param source whether others may have links to it
 * @param known the result of a former check of the same content, or null
 * @param read the text, where it had to be read and there is room for it; else null
 */
record FileState(Path file, String path, FileStamp stamp, String hash, boolean source, StoredResult known,
		SoftReference<FileText> read) {

	static FileState of(Path file, String path, ResultStore store, Map<Path, String> otherTexts) {
		StoredResult stored = store.get(path);
		FileStamp stamp = otherTexts.containsKey(file) ? null : FileStamp.of(file);
		if (stored != null && stamp != null && stored.holds(stamp)) {
			return new FileState(file, path, stamp, stored.hash(), stored.source(), stored, null);
		}
		FileText text = FileText.of(file, otherTexts);
		String hash = text.hash();
		StoredResult known = stored != null && stored.hash().equals(hash) ? stored : null;
		return new FileState(file, path, stamp, hash, text.isSource(), known,
				known == null ? new SoftReference<>(text) : null);
	}

	/** What the file holds; {@link #hash} is of the same text unless it was changed meanwhile. */
	FileText text(Map<Path, String> otherTexts) {
		FileText text = read == null ? null : read.get();
		return text == null ? FileText.of(file, otherTexts) : text;
	}

	/** Whether there is a result that still holds. */
	boolean isJudged(SourceGraph graph) {
		return known != null && known.basis().equals(graph.basis(known.result()));
	}

	/** With the result of judging this text now. */
	FileState judged(FileText text, FileResult result, SourceGraph graph) {
		String judgedHash = read != null && read.get() == text ? hash : text.hash();
		return new FileState(file, path, stamp, judgedHash, source,
				new StoredResult(stamp, judgedHash, source, graph.basis(result), result), null);
	}
}

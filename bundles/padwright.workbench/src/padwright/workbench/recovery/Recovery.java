package padwright.workbench.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.core.runtime.ILog;

import padwright.language.files.UnreadableException;
import padwright.language.shop.ShopFolder;
import padwright.workbench.Messages;

/** Unsaved texts that an earlier run left behind, because it was ended before it could ask. */
public final class Recovery {

	private static final Set<Path> OFFERED = ConcurrentHashMap.newKeySet();

	private Recovery() {
	}

	/**
	 * The unsaved text of a document, if one was left behind that differs from what is saved. From now on it is on offer
	 * and is not overwritten, until {@link #settle} is called.
	 */
	static Optional<String> offer(Path document, String saved) {
		try {
			Optional<String> text = Sidecar.of(document).text().filter(kept -> !kept.equals(saved));
			if (text.isPresent()) {
				OFFERED.add(document);
			} else {
				Sidecar.of(document).drop();
			}
			return text;
		} catch (IOException unreadable) {
			warn(document, unreadable);
			return Optional.empty();
		}
	}

	static boolean isOnOffer(Path document) {
		return OFFERED.contains(document);
	}

	/** The user has decided on what was offered; it is kept no longer. */
	static void settle(Path document) {
		OFFERED.remove(document);
		try {
			Sidecar.of(document).drop();
		} catch (IOException staysThere) {
			warn(document, staysThere);
		}
	}

	private static void warn(Path document, IOException problem) {
		ILog.of(Recovery.class).warn(Messages.get("autosave.failed", document.getFileName(), problem.getMessage()));
	}

	/** The documents of a shop with unsaved texts left behind. */
	public static List<Path> leftBehind(Path shop) {
		try {
			return ShopFolder.documents(shop).stream().filter(document -> Files.exists(Sidecar.of(document).file()))
					.toList();
		} catch (UnreadableException nothingToRead) {
			return List.of();
		}
	}
}

package padwright.language.ide.server;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.FileURIHandlerImpl;

import com.google.inject.Singleton;

import padwright.language.files.SourceText;
import padwright.language.files.UnreadableException;

/**
 * Reads documents from disk within the same limits as the command line. One that cannot be read, or that went while the
 * shop was read, is empty: it must not keep all the others from being read.
 */
@Singleton
final class ShopFiles extends FileURIHandlerImpl {

	private final Map<URI, String> unreadable = new ConcurrentHashMap<>();

	@Override
	public InputStream createInputStream(URI uri, Map<?, ?> options) {
		Path file = Path.of(uri.toFileString());
		unreadable.remove(uri);
		try {
			return new ByteArrayInputStream(SourceText.read(file).getBytes(StandardCharsets.UTF_8));
		} catch (UnreadableException reason) {
			if (Files.exists(file)) {
				unreadable.put(uri, reason.getMessage());
			}
			return InputStream.nullInputStream();
		}
	}

	/** Why a file that is there could not be read when it was read last. */
	Optional<String> whyUnreadable(URI file) {
		return Optional.ofNullable(unreadable.get(file));
	}
}

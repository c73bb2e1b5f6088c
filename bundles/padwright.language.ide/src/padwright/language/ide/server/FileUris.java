package padwright.language.ide.server;

import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.ide.server.UriExtensions;

/** Between the paths of files and the one form of URI in which a server knows them. */
final class FileUris {

	private static final UriExtensions URIS = new UriExtensions();

	private FileUris() {
	}

	static URI of(Path file) {
		return URIS.withEmptyAuthority(URI.createFileURI(file.toString()));
	}

	/** The file, absolute; nothing for what is no file, such as a text that was never saved. */
	static Optional<Path> path(URI uri) {
		return uri != null && uri.isFile() ? path(URIS.toUriString(uri)) : Optional.empty();
	}

	/** As {@link #path(URI)}, for a URI as clients write it. */
	static Optional<Path> path(String uri) {
		try {
			return Optional.of(Path.of(java.net.URI.create(uri)).toAbsolutePath().normalize());
		} catch (IllegalArgumentException | FileSystemNotFoundException noFile) {
			return Optional.empty();
		}
	}

	static String text(Path file) {
		return URIS.toUriString(of(file));
	}
}

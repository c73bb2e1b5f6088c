package padwright.language.files;

import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.io.IOException;
import java.util.Set;

/** A file system as it is, but with another provider. */
final class FileSystemOf extends FileSystem {

	private final FileSystem real;
	private final FileSystemProvider provider;

	FileSystemOf(FileSystem real, FileSystemProvider provider) {
		this.real = real;
		this.provider = provider;
	}

	@Override
	public FileSystemProvider provider() {
		return provider;
	}

	@Override
	public void close() {
		// It is that of the machine.
	}

	@Override
	public boolean isOpen() {
		return real.isOpen();
	}

	@Override
	public boolean isReadOnly() {
		return real.isReadOnly();
	}

	@Override
	public String getSeparator() {
		return real.getSeparator();
	}

	@Override
	public Iterable<Path> getRootDirectories() {
		return real.getRootDirectories();
	}

	@Override
	public Iterable<FileStore> getFileStores() {
		return real.getFileStores();
	}

	@Override
	public Set<String> supportedFileAttributeViews() {
		return real.supportedFileAttributeViews();
	}

	@Override
	public Path getPath(String first, String... more) {
		return real.getPath(first, more);
	}

	@Override
	public PathMatcher getPathMatcher(String pattern) {
		return real.getPathMatcher(pattern);
	}

	@Override
	public UserPrincipalLookupService getUserPrincipalLookupService() {
		return real.getUserPrincipalLookupService();
	}

	@Override
	public WatchService newWatchService() throws IOException {
		return real.newWatchService();
	}
}

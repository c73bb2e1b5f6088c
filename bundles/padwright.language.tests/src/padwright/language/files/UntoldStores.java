package padwright.language.files;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Map;
import java.util.Set;

/** Files on a disk whose mount point cannot be told, as below a root that was changed; all else is as it is. */
final class UntoldStores extends FileSystemProvider {

	private final FileSystemProvider real;

	private UntoldStores(FileSystemProvider real) {
		this.real = real;
	}

	/** The same file, seen so. */
	static Path of(Path file) {
		FileSystemProvider provider = new UntoldStores(file.getFileSystem().provider());
		FileSystem system = new FileSystemOf(file.getFileSystem(), provider);
		return (Path) Proxy.newProxyInstance(UntoldStores.class.getClassLoader(), new Class<?>[] { Path.class },
				(path, method, arguments) -> {
					if (method.getName().equals("getFileSystem")) {
						return system;
					}
					try {
						return method.invoke(file, arguments);
					} catch (InvocationTargetException failed) {
						throw failed.getCause();
					}
				});
	}

	private static Path real(Path path) {
		return Path.of(path.toString());
	}

	@Override
	public FileStore getFileStore(Path path) throws IOException {
		throw new FileSystemException(path.toString(), null, "Mount point not found");
	}

	@Override
	public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
		return real.getFileAttributeView(real(path), type, options);
	}

	@Override
	public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
			throws IOException {
		return real.readAttributes(real(path), type, options);
	}

	@Override
	public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options)
			throws IOException {
		return real.readAttributes(real(path), attributes, options);
	}

	@Override
	public void checkAccess(Path path, AccessMode... modes) throws IOException {
		real.checkAccess(real(path), modes);
	}

	@Override
	public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
		real.setAttribute(real(path), attribute, value, options);
	}

	@Override
	public String getScheme() {
		return real.getScheme();
	}

	@Override
	public FileSystem newFileSystem(URI uri, Map<String, ?> settings) {
		throw new UnsupportedOperationException();
	}

	@Override
	public FileSystem getFileSystem(URI uri) {
		throw new UnsupportedOperationException();
	}

	@Override
	public Path getPath(URI uri) {
		return real.getPath(uri);
	}

	@Override
	public SeekableByteChannel newByteChannel(Path path, Set<? extends OpenOption> options,
			FileAttribute<?>... attributes) throws IOException {
		return real.newByteChannel(real(path), options, attributes);
	}

	@Override
	public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
			throws IOException {
		return real.newDirectoryStream(real(folder), filter);
	}

	@Override
	public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
		real.createDirectory(real(folder), attributes);
	}

	@Override
	public void delete(Path path) throws IOException {
		real.delete(real(path));
	}

	@Override
	public void copy(Path from, Path to, CopyOption... options) throws IOException {
		real.copy(real(from), real(to), options);
	}

	@Override
	public void move(Path from, Path to, CopyOption... options) throws IOException {
		real.move(real(from), real(to), options);
	}

	@Override
	public boolean isSameFile(Path one, Path other) throws IOException {
		return real.isSameFile(real(one), real(other));
	}

	@Override
	public boolean isHidden(Path path) throws IOException {
		return real.isHidden(real(path));
	}
}

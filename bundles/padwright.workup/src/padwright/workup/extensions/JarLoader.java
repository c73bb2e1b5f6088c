package padwright.workup.extensions;

import java.io.IOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Enumeration;

/** The classes of one jar over those of the program; of services it tells those alone that the jar itself brings. */
final class JarLoader extends URLClassLoader {

	private static final String SERVICES = "META-INF/services/";

	JarLoader(Path jar, ClassLoader program) throws MalformedURLException {
		super(new URL[] { jar.toUri().toURL() }, program);
	}

	@Override
	public Enumeration<URL> getResources(String name) throws IOException {
		return name.startsWith(SERVICES) ? findResources(name) : super.getResources(name);
	}
}

package padwright.language.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.LazyStringInputStream;
import org.eclipse.xtext.util.OnChangeEvictingCache;

import com.google.inject.Injector;

/**
 * Where one file after the other is read, looked at and let go of. They share one resource, since making one takes
 * nearly as long as reading a plan. For one thread.
 */
final class ArchiveReader {

	private final Injector language;
	private final XtextResourceSet resources;
	private XtextResource free;

	/** @param resources what a file on the desk can have links to */
	ArchiveReader(Injector language, XtextResourceSet resources) {
		this.language = language;
		this.resources = resources;
	}

	/**
	 * Looks at a file.
	 *
	 * @throws StackOverflowError if it is nested too deeply to be read
	 */
	FileResult look(Path file, String text, Function<XtextResource, FileResult> use) {
		XtextResource resource = free == null ? fresh() : free;
		// Not to be used again unless all goes well: whatever breaks off halfway may leave something behind in it.
		free = null;
		resource.setURI(URI.createFileURI(file.toString()));
		resources.getResources().add(resource);
		try {
			resource.reparse(text);
			FileResult result = use.apply(resource);
			clear(resource);
			free = result.isOfUsable() ? resource : null;
			return result;
		} catch (IOException never) {
			throw new IllegalStateException(never);
		} finally {
			resources.getResources().remove(resource);
		}
	}

	/** Without telling it to each of the elements, which are all let go of together. */
	private static void clear(XtextResource resource) {
		resource.eSetDeliver(false);
		resource.getContents().clear();
		resource.eSetDeliver(true);
		((OnChangeEvictingCache) resource.getCache()).clear(resource);
	}

	private XtextResource fresh() {
		XtextResource resource = language.getInstance(XtextResource.class);
		// Nobody holds on to the elements of the file before, so that none of them need be told that it is gone.
		resource.setUnloader(null);
		try {
			resource.load(new LazyStringInputStream(""), Map.of());
			return resource;
		} catch (IOException never) {
			throw new IllegalStateException(never);
		}
	}
}

package padwright.workbench.shops;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.FrameworkUtil;

import padwright.language.files.SafeFile;
import padwright.language.shop.ShopFolder;
import padwright.workbench.Messages;
import padwright.workbench.editor.Places;
import padwright.workbench.session.OpenShops;
import padwright.workbench.tour.TourView;

/** The invented shop that the workbench brings along, to try it with. It is copied, so that it can be written in. */
public final class ExampleShop {

	private static final String ENTRIES = "src-gen/shop";
	private static final String FIRST_PLAN = "plans/spring-service.plan";

	private ExampleShop() {
	}

	/** Where the copy is put unless the user wants it elsewhere. */
	static Path usualFolder() {
		return home(System.getenv("HOME"), System.getProperty("user.home")).resolve(Messages.get("example.folder"));
	}

	/**
	 * The folder of the user: where {@code HOME} says, as every other program has it, and else where Java takes it from.
	 *
	 * @param said may be null
	 */
	static Path home(String said, String otherwise) {
		return said != null && !said.isBlank() && Path.of(said).isAbsolute() ? Path.of(said) : Path.of(otherwise);
	}

	/** Copies the shop in the background, if it is not there yet, opens its first plan and begins the tour. */
	public static void open(Path folder) {
		Job job = Job.create(Messages.get("example.opening"), (ICoreRunnable) monitor -> open(folder, monitor));
		job.setUser(true);
		job.schedule();
	}

	private static void open(Path folder, IProgressMonitor monitor) throws CoreException {
		try {
			copyTo(folder);
		} catch (IOException failed) {
			throw new CoreException(
					Status.error(Messages.get("example.failed", folder, failed.getLocalizedMessage()), failed));
		}
		IFolder shop = OpenShops.open(folder, monitor);
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
			Places.editor(shop.getFile(FIRST_PLAN));
			TourView.begin();
		});
	}

	/**
	 * Copies the files of the shop into a folder. Those that are there stay as they are, so that what was tried is not
	 * lost, and a copy that was broken off is completed. The mark of a shop comes last.
	 *
	 * @throws IOException if the folder holds something else, or cannot be written
	 */
	public static void copyTo(Path folder) throws IOException {
		if (ShopFolder.isMarked(folder)) {
			return;
		}
		Map<String, URL> files = files();
		requireNothingElse(folder, files);
		URL marker = files.remove(ShopFolder.MARKER);
		for (Map.Entry<String, URL> file : files.entrySet()) {
			copy(file.getValue(), folder.resolve(file.getKey()));
		}
		copy(marker, folder.resolve(ShopFolder.MARKER));
	}

	/**
	 * Copies one file of the shop into a folder.
	 *
	 * @param path in the shop
	 * @throws IOException if it cannot be written
	 */
	public static void copy(String path, Path folder) throws IOException {
		copy(files().get(path), folder.resolve(path));
	}

	private static Map<String, URL> files() {
		Map<String, URL> files = new TreeMap<>();
		String top = "/" + ENTRIES + "/";
		for (URL entry : Collections.list(FrameworkUtil.getBundle(ExampleShop.class).findEntries(ENTRIES, "*", true))) {
			String path = entry.getPath();
			if (!path.endsWith("/")) {
				files.put(path.substring(path.indexOf(top) + top.length()), entry);
			}
		}
		return files;
	}

	private static void requireNothingElse(Path folder, Map<String, URL> files) throws IOException {
		if (!Files.isDirectory(folder)) {
			return;
		}
		try (Stream<Path> all = Files.walk(folder)) {
			boolean foreign = all.filter(Files::isRegularFile).map(folder::relativize)
					.map(path -> path.toString().replace('\\', '/')).anyMatch(path -> !files.containsKey(path));
			if (foreign) {
				throw new IOException(Messages.get("example.notEmpty"));
			}
		}
	}

	private static void copy(URL from, Path to) throws IOException {
		if (!Files.exists(to)) {
			Files.createDirectories(to.getParent());
			try (InputStream content = from.openStream()) {
				SafeFile.write(to, content.readAllBytes());
			}
		}
	}
}

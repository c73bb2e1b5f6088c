package padwright.workbench.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.filesystem.URIUtil;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.QualifiedName;

import padwright.language.shop.ShopFolder;

/**
 * The shop folders that are open. Each is linked into one project of the workspace, so that nothing of the workbench's
 * own is written into a shop.
 */
public final class OpenShops {

	private static final String PROJECT = "Shops";
	/** Tells menus that a folder is a shop. */
	private static final QualifiedName SHOP = new QualifiedName("padwright.workbench", "shop");

	private static final List<Consumer<IFolder>> LISTENERS = new CopyOnWriteArrayList<>();

	private OpenShops() {
	}

	/** Tells somebody of each shop that is opened from now on, on the thread that opened it. */
	public static void addListener(Consumer<IFolder> opened) {
		LISTENERS.add(opened);
	}

	public static void removeListener(Consumer<IFolder> opened) {
		LISTENERS.remove(opened);
	}

	/** The project that holds the open shops; made if there is none. */
	public static IProject project() throws CoreException {
		IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(PROJECT);
		if (!project.exists()) {
			project.create(null);
		}
		if (!project.isOpen()) {
			project.open(null);
		}
		return project;
	}

	/** The open shops, where they are on disk. */
	public static List<Path> folders() {
		List<Path> folders = new ArrayList<>();
		try {
			for (IResource member : project().members()) {
				if (member instanceof IContainer shop && shop.isLinked() && shop.getLocation() != null) {
					folders.add(shop.getLocation().toPath());
				}
			}
		} catch (CoreException unreadable) {
			ILog.of(OpenShops.class).log(unreadable.getStatus());
		}
		return folders;
	}

	/** Opens the shop around a folder; if it is open already, it stays so. */
	public static IFolder open(Path folder, IProgressMonitor monitor) throws CoreException {
		Path shop = ShopFolder.around(folder);
		Optional<IFolder> already = find(shop);
		if (already.isPresent()) {
			return already.get();
		}
		IFolder link = project().getFolder(freeName(shop.getFileName().toString()));
		link.createLink(URIUtil.toURI(shop.toString()), IResource.NONE, monitor);
		link.setPersistentProperty(SHOP, Boolean.TRUE.toString());
		LanguageSession.get().opened(shop);
		LISTENERS.forEach(listener -> listener.accept(link));
		return link;
	}

	/** Takes a shop out of the workbench; its files stay where they are. */
	public static void close(IFolder shop, IProgressMonitor monitor) throws CoreException {
		Path path = shop.getLocation().toPath();
		shop.delete(true, monitor);
		LanguageSession.get().closed(path);
	}

	private static Optional<IFolder> find(Path shop) throws CoreException {
		for (IResource member : project().members()) {
			if (member instanceof IFolder folder && folder.getLocation() != null
					&& folder.getLocation().toPath().equals(shop)) {
				return Optional.of(folder);
			}
		}
		return Optional.empty();
	}

	private static String freeName(String wanted) throws CoreException {
		String name = wanted;
		for (int number = 2; project().findMember(name) != null; number++) {
			name = wanted + " " + number;
		}
		return name;
	}
}

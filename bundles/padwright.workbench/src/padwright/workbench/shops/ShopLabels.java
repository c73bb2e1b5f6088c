package padwright.workbench.shops;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.jface.viewers.DecorationOverlayIcon;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;

import padwright.workbench.Messages;
import padwright.workbench.session.Finding;

/** The names of shops, folders and documents, of which kind each is, and a mark on what has something to put right. */
final class ShopLabels extends LabelProvider {

	private static final String BUNDLE = "padwright.workbench";
	private static final Map<String, String> ICONS = Map.of("plan", "icons/plan.svg", "keys", "icons/key-system.svg",
			"stock", "icons/stock.svg");

	private final Map<String, Image> images = new HashMap<>();

	/**
	 * The name with the kind in words, in place of the ending that tells it. The system draws it: what is drawn by the
	 * platform in parts of several colours was left blank in rows that it had measured too early.
	 */
	@Override
	public String getText(Object element) {
		String name = element instanceof IResource resource ? resource.getName() : String.valueOf(element);
		return kind(element).map(kind -> Messages.get("shops.named", name.substring(0, name.length() - kind.length() - 1),
				Messages.get("shops.kind." + kind))).orElse(name);
	}

	private static Optional<String> kind(Object element) {
		return element instanceof IFile file ? Optional.ofNullable(file.getFileExtension()).filter(ICONS::containsKey)
				: Optional.empty();
	}

	@Override
	public Image getImage(Object element) {
		int severity = element instanceof IResource resource ? severity(resource) : -1;
		String icon = kind(element).map(ICONS::get).orElse("");
		boolean folder = icon.isEmpty() && !(element instanceof IFile);
		return images.computeIfAbsent(icon + folder + severity, key -> image(icon, folder, severity));
	}

	private static Image image(String icon, boolean folder, int severity) {
		ImageDescriptor plain = ResourceLocator.imageDescriptorFromBundle(BUNDLE, icon.isEmpty() ? "-" : icon)
				.orElseGet(() -> shared(folder ? ISharedImages.IMG_OBJ_FOLDER : ISharedImages.IMG_OBJ_FILE));
		return switch (severity) {
			case IMarker.SEVERITY_ERROR -> marked(plain, ISharedImages.IMG_DEC_FIELD_ERROR);
			case IMarker.SEVERITY_WARNING -> marked(plain, ISharedImages.IMG_DEC_FIELD_WARNING);
			default -> plain.createImage();
		};
	}

	private static Image marked(ImageDescriptor plain, String mark) {
		Image ground = plain.createImage();
		Image both = new DecorationOverlayIcon(ground, shared(mark), IDecoration.BOTTOM_LEFT).createImage();
		ground.dispose();
		return both;
	}

	private static ImageDescriptor shared(String name) {
		return PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(name);
	}

	/** The gravest finding in a document, or in a folder; below 0 for none. */
	static int severity(IResource resource) {
		try {
			return resource.exists() ? resource.findMaxProblemSeverity(Finding.MARKER, true, IResource.DEPTH_INFINITE) : -1;
		} catch (CoreException gone) {
			return -1;
		}
	}

	@Override
	public void dispose() {
		images.values().forEach(Image::dispose);
		super.dispose();
	}
}

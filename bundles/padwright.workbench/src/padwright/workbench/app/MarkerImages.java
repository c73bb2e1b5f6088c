package padwright.workbench.app;

import java.util.Map;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.internal.ide.IDEInternalWorkbenchImages;

/** The signs of errors, warnings and remarks: the view of problems takes them from the program that it is part of. */
final class MarkerImages {

	private static final String BUNDLE = "org.eclipse.ui.ide";
	private static final String FOLDER = "icons/full/obj16/";
	private static final Map<String, String> FILES = Map.of(
			IDEInternalWorkbenchImages.IMG_OBJS_ERROR_PATH, "error_tsk",
			IDEInternalWorkbenchImages.IMG_OBJS_WARNING_PATH, "warn_tsk",
			IDEInternalWorkbenchImages.IMG_OBJS_INFO_PATH, "info_tsk");

	private MarkerImages() {
	}

	static void declare(IWorkbenchConfigurer configurer) {
		FILES.forEach((symbol, file) -> configurer.declareImage(symbol, image(file), true));
	}

	private static ImageDescriptor image(String file) {
		return ResourceLocator.imageDescriptorFromBundle(BUNDLE, FOLDER + file + ".svg")
				.orElseGet(ImageDescriptor::getMissingImageDescriptor);
	}
}

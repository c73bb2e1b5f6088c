package padwright.workbench.reports;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;

import com.google.inject.Injector;

import padwright.language.PadwrightStandaloneSetup;
import padwright.language.files.UnreadableException;
import padwright.language.ide.server.LocalServer;
import padwright.language.shop.Shop;
import padwright.language.shop.ShopFolder;
import padwright.model.plan.Plan;
import padwright.workbench.safe.OnDisk;
import padwright.workbench.session.Documents;
import padwright.workbench.session.Finding;

/**
 * A plan of a shop, read apart from the server so that it stays as it is.
 *
 * @param findings what is to be put right in its document, as it is shown in the window
 */
public record ShopPlan(Plan plan, Path file, List<String> findings) {

	private static final class Holder {
		private static final Injector LANGUAGE = new PadwrightStandaloneSetup().createInjector();
	}

	/** All plans of a shop, with the texts as they are in the window; files that cannot be read are left out. */
	public static List<ShopPlan> in(Path folder) {
		try {
			Shop shop = Shop.open(Holder.LANGUAGE, ShopFolder.documents(folder), unsaved());
			List<ShopPlan> plans = new ArrayList<>();
			for (Path file : shop.files()) {
				if (shop.whyUnreadable(file).isEmpty()) {
					shop.document(file).ifPresent(document -> document.getPlans()
							.forEach(plan -> plans.add(new ShopPlan(plan, file, findings(file)))));
				}
			}
			return plans;
		} catch (UnreadableException reason) {
			throw new IllegalArgumentException(folder + " " + reason.getMessage(), reason);
		}
	}

	/** Texts that are open, by the real paths of their files. */
	private static Map<Path, String> unsaved() {
		Map<Path, String> texts = new HashMap<>();
		for (IFileBuffer buffer : FileBuffers.getTextFileBufferManager().getFileBuffers()) {
			if (buffer.isDirty() && buffer instanceof ITextFileBuffer text) {
				OnDisk.path(buffer).ifPresent(path -> texts.put(path, text.getDocument().get()));
			}
		}
		return texts;
	}

	private static List<String> findings(Path file) {
		return Documents.file(LocalServer.uri(file)).stream().flatMap(found -> {
			try {
				return Arrays.stream(found.findMarkers(Finding.MARKER, true, IResource.DEPTH_ZERO));
			} catch (CoreException gone) {
				return Optional.<IMarker>empty().stream();
			}
		}).map(marker -> marker.getAttribute(IMarker.MESSAGE, "")).toList();
	}
}
